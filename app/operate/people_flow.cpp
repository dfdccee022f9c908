#include "app/operate/people_flow.h"

#include "app/operate/certificate_line.h"
#include "app/text/phrase_book.h"
#include "app/text/words.h"

#include <algorithm>
#include <utility>

namespace seamclock {
namespace {

HeldPin held(Result<Pin> pin) {
    return pin ? std::make_shared<const Pin>(std::move(*pin)) : HeldPin();
}

/// A copy, since whoever is asked later may be given another.
std::optional<Pin> copyOf(const HeldPin& pin) {
    if (!pin) {
        return std::nullopt;
    }
    auto copy = Pin::read(pin->digits().view());
    return copy ? std::optional<Pin>(std::move(*copy)) : std::nullopt;
}

QString lengthText(Role role) {
    return role == Role::Foreman
               ? PeopleFlow::tr("%1 to %2 digits: it locks the key of the seal.")
                     .arg(kShortestForemanPin)
                     .arg(kLongestPin)
               : PeopleFlow::tr("%1 to %2 digits.").arg(kShortestPin).arg(kLongestPin);
}

} // namespace

PeopleFlow::PeopleFlow(Desk& desk, Floor& floor, QString reports, QWidget* window)
    : PageFlow(window), m_desk(desk), m_floor(floor), m_reports(std::move(reports)),
      m_choice(new ChoicePage(window)), m_pin(new PinPage(window)), m_name(new NamePage(window)),
      m_seal(new SealPage(window)) {
    m_choice->setObjectName("people");
    take(pages());
    connect(m_choice, &ChoicePage::chosen, this, &PeopleFlow::touched);
    takeAnswers(m_choice);
    connect(m_pin, &PinPage::typed, this, [this] {
        touched();
        m_stage.wrong = false;
        m_stage.refused.clear();
        showPin();
    });
    connect(m_name, &NamePage::typed, this, &PeopleFlow::touched);
    if (knowsSomebody(people())) {
        m_floor.setBy(kStation); // until somebody says who it is
    }
}

bool PeopleFlow::mustAsk() const {
    return !m_asked && m_atBench.empty() && knowsSomebody(people());
}

// ---- pages

void PeopleFlow::turning(Page* next) {
    if (next != m_pin) {
        m_pin->draft().clear();
        m_onPin = {};
    }
    touched();
}

bool PeopleFlow::takesPress(SlotPlace) {
    touched();
    return false;
}

void PeopleFlow::touched() {
    m_lastPress = m_floor.now().boot;
}

void PeopleFlow::close() {
    shut();
    m_access.reset();
    m_pin->draft().clear();
    m_onPin = {};
}

void PeopleFlow::leave() {
    close();
    emit left();
}

void PeopleFlow::typed(QChar sign) {
    if (page() == m_pin) {
        m_pin->pad()->type(sign);
    }
}

void PeopleFlow::erased() {
    if (page() == m_pin) {
        m_pin->pad()->erase();
    }
}

void PeopleFlow::takeKeys() {
    if (page() == m_name) {
        m_name->takeKeys();
    }
}

void PeopleFlow::look(const Instant& now) {
    if (page() == nullptr) {
        return;
    }
    const bool secret = m_access || m_onPin || m_pin->draft().count() > 0;
    if (secret && now.boot - m_lastPress >= kDeskStaysOpen) {
        leave();
        emit said(tr("Two minutes without a press: the desk is closed."));
        return;
    }
    if (page() == m_pin) {
        showPin();
    }
}

// ---- names and PINs

void PeopleFlow::askName(const QString& title, const QString& now, Press stop) {
    NameView view;
    view.title = title;
    view.under = tr("1 to %1 characters, by the keyboard.").arg(kLongestName);
    view.back = hiddenSlot();
    view.stop = plainSlot(tr("Close"), tr("nothing is kept"));
    view.step = stepSlot(tr("Go on"));
    m_name->setName(now);
    m_name->show(view);
    turnTo(m_name, {}, std::move(stop));
}

void PeopleFlow::askPin(const PinStage& stage, PinThen then, Press stop) {
    m_stage = stage;
    m_waitUntil = Milliseconds(0);
    m_pin->draft().clear();
    turnTo(
        m_pin, [this] { takePin(); }, std::move(stop),
        [this] {
            m_pin->draft().clear();
            showPin();
        });
    m_onPin = std::move(then);
    showPin();
}

void PeopleFlow::showPin() {
    m_stage.digits = m_pin->draft().count();
    m_stage.wait = std::max(Milliseconds(0), m_waitUntil - m_floor.now().boot);
    m_pin->show(pinView(m_stage));
}

void PeopleFlow::takePin() {
    showPin();
    const bool waits = m_stage.wait > Milliseconds(0);
    if (m_stage.checking || waits || m_stage.digits < m_stage.least) {
        return;
    }
    const HeldPin pin = held(m_pin->draft().read());
    m_pin->draft().clear();
    if (const PinThen then = m_onPin; then && pin) {
        then(pin);
    }
}

void PeopleFlow::enter(
    const Person& person, const QString& where, const QString& step,
    std::function<void(const Proof&, const HeldPin&)> then, Press stop) {
    PinStage stage;
    stage.title = tr("PIN of %1").arg(fromUtf8(person.name));
    stage.where = where;
    if (const auto shown = m_shownPins.find(person.id); shown != m_shownPins.end()) {
        stage.where = tr("Demo shop: the PIN is %1.").arg(shown->second);
    }
    stage.step = step;
    const auto tried = [this, then = std::move(then)](const Entry& entry, const HeldPin& pin) {
        m_stage.checking = false;
        if (entry.access) {
            then(entry.access, pin);
            return;
        }
        m_waitUntil = m_floor.now().boot + entry.pause;
        const bool refused = entry.error.code == ErrorCode::Refused;
        m_stage.wrong = refused;
        m_stage.refused = refused ? QString() : inWords(entry.error.detail);
        showPin();
    };
    askPin(
        stage,
        [this, id = person.id, tried](const HeldPin& pin) {
            m_stage.checking = true;
            showPin();
            m_desk.enter(this, id, pin, here<Entry>([tried, pin](const Entry& entry) {
                             tried(entry, pin);
                         }));
        },
        std::move(stop));
    // Wrong ones of before may have to be waited for.
    m_desk.askPause(this, person.id, here<Milliseconds>([this](const Milliseconds& pause) {
                        m_waitUntil = m_floor.now().boot + pause;
                        showPin();
                    }));
}

void PeopleFlow::freshPin(const QString& name, Role role, PinThen then, const Press& stop) {
    PinStage stage;
    stage.title = tr("New PIN of %1").arg(name);
    stage.where = lengthText(role);
    stage.step = tr("Go on");
    stage.least = static_cast<int>(role == Role::Foreman ? kShortestForemanPin : kShortestPin);
    askPin(
        stage,
        [this, name, role, then = std::move(then), stop](const HeldPin& first) {
            freshPinAgain(name, role, first, then, stop);
        },
        stop);
}

void PeopleFlow::freshPinAgain(
    const QString& name, Role role, const HeldPin& first, PinThen then, const Press& stop) {
    PinStage stage;
    stage.title = tr("The same PIN once more");
    stage.where = tr("New PIN of %1").arg(name);
    stage.step = tr("Keep this PIN");
    stage.least = static_cast<int>(first->digits().size());
    askPin(
        stage,
        [this, name, role, first, then = std::move(then), stop](const HeldPin& second) {
            if (first->digits().view() != second->digits().view()) {
                freshPin(name, role, then, stop);
                m_stage.refused = tr("The two were not the same. Type it anew.");
                showPin();
                return;
            }
            m_stage.checking = true;
            showPin();
            then(second);
        },
        stop);
}

// ---- who is at the bench

void PeopleFlow::openWho() {
    m_access.reset();
    m_asked = true;
    const PeopleQuestion question = whoQuestion(people(), m_atBench);
    choose(
        question.page,
        [this, ids = question.ids](int index) {
            choosePerson(ids.at(static_cast<std::size_t>(index)));
        },
        [this] { leave(); }, [this] { hasForeman(people().people) ? openDesk() : firstForeman(); });
    presses().back = [this] { ownPin(); };
}

void PeopleFlow::choosePerson(const std::string& id) {
    const Person* person = findPerson(people().people, id);
    if (person == nullptr) {
        return;
    }
    const auto enters = [this, id] {
        setAtBench(id);
        leave();
    };
    if (!people().hasPin(*person)) {
        enters();
        return;
    }
    enter(
        *person, tr("The steps are then written in this name."), tr("Sign in"),
        [enters](const Proof&, const HeldPin&) { enters(); }, [this] { openWho(); });
}

void PeopleFlow::setAtBench(const std::string& id) {
    m_atBench = id;
    m_floor.setBy(id.empty() ? kStation : id);
}

void PeopleFlow::ownPin() {
    const PeopleQuestion question = ownPinQuestion(people());
    choose(
        question.page,
        [this, ids = question.ids](int index) {
            const Person* person =
                findPerson(people().people, ids.at(static_cast<std::size_t>(index)));
            if (person != nullptr) {
                ownPinOf(*person);
            }
        },
        {}, [this] { openWho(); });
}

void PeopleFlow::ownPinOf(const Person& person) {
    const Press back = [this] { ownPin(); };
    enter(
        person, tr("First the one that holds now."), tr("Go on"),
        [this, person, back](const Proof&, const HeldPin& old) {
            freshPin(
                fromUtf8(person.name), person.role,
                [this, person, old](const HeldPin& fresh) {
                    m_desk.run<Result<void>>(
                        this,
                        [id = person.id, old, fresh](Office& office) {
                            return office.changePin(id, *old, *fresh);
                        },
                        here<Result<void>>([this, person](const Result<void>& changed) {
                            openWho();
                            if (changed) {
                                emit said(tr("%1 has a new PIN.").arg(fromUtf8(person.name)));
                            } else {
                                tell(changed.error());
                            }
                        }));
                },
                back);
        },
        back);
}

// ---- a foreman proves himself

void PeopleFlow::askForeman(const QString& forWhat, std::function<void(const ProvenPerson&)> then) {
    m_access.reset();
    const std::vector<Person> foremen = foremenWithPin(people());
    const Press stop = [this] { leave(); };
    const auto ask = [this, forWhat, then = std::move(then), stop](const Person& foreman) {
        enter(
            foreman, forWhat, tr("Allow it"),
            [this, then](const Proof& proof, const HeldPin&) {
                close();
                then(proof->who);
                emit left();
            },
            stop);
    };
    if (foremen.size() == 1) {
        ask(foremen.front());
        return;
    }
    const PeopleQuestion question = foremanQuestion(people(), forWhat);
    choose(
        question.page,
        [foremen, ask](int index) { ask(foremen.at(static_cast<std::size_t>(index))); }, {}, stop);
}

void PeopleFlow::openDesk() {
    m_access.reset();
    const Press stop = [this] { openWho(); };
    const auto ask = [this, stop](const Person& foreman) {
        enter(
            foreman, tr("For people, PINs and the day's seal."), tr("Open the desk"),
            [this](const Proof& proof, const HeldPin&) {
                m_access = proof;
                showDesk();
            },
            stop);
    };
    const std::vector<Person> foremen = foremenWithPin(people());
    if (foremen.size() == 1) {
        ask(foremen.front());
        return;
    }
    const PeopleQuestion question =
        foremanQuestion(people(), tr("For people, PINs and the day's seal."));
    choose(
        question.page,
        [foremen, ask](int index) { ask(foremen.at(static_cast<std::size_t>(index))); }, {}, stop);
}

void PeopleFlow::openSeal() {
    m_access.reset();
    const QString forWhat = tr("For the day's seal.");
    const Press stop = [this] { leave(); };
    const auto ask = [this, forWhat, stop](const Person& foreman) {
        enter(
            foreman, forWhat, tr("Close the day"),
            [this](const Proof& proof, const HeldPin&) {
                m_access = proof;
                showDay(true);
            },
            stop);
    };
    const std::vector<Person> foremen = foremenWithPin(people());
    if (foremen.size() == 1) {
        ask(foremen.front());
        return;
    }
    const PeopleQuestion question = foremanQuestion(people(), forWhat);
    choose(
        question.page,
        [foremen, ask](int index) { ask(foremen.at(static_cast<std::size_t>(index))); }, {}, stop);
}

void PeopleFlow::firstForeman() {
    askFirstForeman(
        [this] { openWho(); },
        [this](const Proof& proof) {
            m_access = proof;
            setAtBench({});
            m_asked = false; // it is when the desk is left
            showDesk();
        });
}

void PeopleFlow::askFirstForeman(const Press& stop, const std::function<void(const Proof&)>& then) {
    askName(tr("Who is the first foreman?"), {}, stop);
    presses().step = [this, stop, then] {
        const std::string name = m_name->name().toStdString();
        const Person sound{newPersonId(name, {}), name, Role::Foreman, true};
        if (const auto fits = checkPerson(sound); !fits) {
            tell(fits.error());
            return;
        }
        freshPin(
            fromUtf8(name), Role::Foreman,
            [this, name, stop, then](const HeldPin& pin) {
                m_desk.run<Entry>(
                    this,
                    [name, pin](Office& office) {
                        Entry entry;
                        const auto person = office.addFirstForeman(name, *pin);
                        if (!person) {
                            entry.error = person.error();
                            return entry;
                        }
                        auto access = office.enter(person->id, *pin);
                        if (access) {
                            entry.access = std::make_shared<const Access>(std::move(*access));
                        } else {
                            entry.error = access.error();
                        }
                        return entry;
                    },
                    here<Entry>([this, stop, then](const Entry& entry) {
                        if (!entry.access) {
                            stop();
                            tell(entry.error);
                            return;
                        }
                        then(entry.access);
                    }));
            },
            stop);
    };
}

// ---- the foreman's desk

void PeopleFlow::showDesk() {
    if (!m_access) {
        leave();
        return;
    }
    choose(
        deskPage(nameFor(people(), m_access->who.person())),
        [this](int index) {
            switch (kDeskItems[index]) {
            case DeskItem::Seal:
                showDay(false);
                return;
            case DeskItem::Add:
                addSomebody();
                return;
            case DeskItem::Change:
                changeList();
                return;
            }
        },
        [this] { leave(); }, {});
}

void PeopleFlow::addSomebody() {
    askName(tr("Who is new?"), {}, [this] { showDesk(); });
    presses().step = [this] {
        const std::string name = m_name->name().toStdString();
        const Person sound{newPersonId(name, people().people), name, Role::Operator, true};
        if (const auto fits = checkPerson(sound); !fits) {
            tell(fits.error());
            return;
        }
        addNamed(fromUtf8(name));
    };
}

void PeopleFlow::addNamed(const QString& name) {
    const Press stop = [this] { showDesk(); };
    choose(
        roleQuestion(name, std::nullopt),
        [this, name, stop](int index) {
            const Role role = kRoles[index];
            const PinThen with = [this, name, role](const HeldPin& pin) {
                addWith(name, role, pin);
            };
            if (role == Role::Foreman) {
                freshPin(name, role, with, stop);
                return;
            }
            choose(
                withPinQuestion(name),
                [this, name, role, with, stop](int answer) {
                    if (answer == 0) {
                        freshPin(name, role, with, stop);
                    } else {
                        addWith(name, role, {});
                    }
                },
                {}, stop);
        },
        {}, stop);
}

void PeopleFlow::addWith(const QString& name, Role role, const HeldPin& pin) {
    add(m_access->who, name, role, pin, [this](const Result<Person>& added) {
        showDesk();
        if (!added) {
            tell(added.error());
        }
    });
}

void PeopleFlow::add(
    const ProvenPerson& by, const QString& name, Role role, const HeldPin& pin,
    const std::function<void(const Result<Person>&)>& then) {
    m_desk.run<Result<Person>>(
        this,
        [by, name = name.toStdString(), role, pin](Office& office) {
            return office.addPerson(by, name, role, copyOf(pin));
        },
        here<Result<Person>>(then));
}

void PeopleFlow::changeList() {
    const PeopleQuestion question = changeQuestion(people());
    choose(
        question.page,
        [this, ids = question.ids](int index) {
            changePerson(ids.at(static_cast<std::size_t>(index)));
        },
        {}, [this] { showDesk(); });
}

void PeopleFlow::changePerson(const std::string& id) {
    const Person* found = findPerson(people().people, id);
    if (found == nullptr) {
        changeList();
        return;
    }
    choose(
        personPage(people(), *found),
        [this, person = *found](int index) {
            switch (kPersonItems[index]) {
            case PersonItem::Name:
                renamePerson(person);
                return;
            case PersonItem::Role:
                changeRole(person);
                return;
            case PersonItem::Pin:
                newPin(person);
                return;
            case PersonItem::Certificate:
                noteCertificate(person);
                return;
            case PersonItem::Leave: {
                Person changed = person;
                changed.active = !person.active;
                store(changed, {});
                return;
            }
            }
        },
        {}, [this] { changeList(); });
}

void PeopleFlow::renamePerson(const Person& person) {
    askName(tr("Which name?"), fromUtf8(person.name), [this, id = person.id] { changePerson(id); });
    presses().step = [this, person] {
        Person changed = person;
        changed.name = m_name->name().toStdString();
        if (const auto fits = checkPerson(changed); !fits) {
            tell(fits.error());
            return;
        }
        store(changed, {});
    };
}

void PeopleFlow::changeRole(const Person& person) {
    const Press stop = [this, id = person.id] { changePerson(id); };
    choose(
        roleQuestion(fromUtf8(person.name), person.role),
        [this, person, stop](int index) {
            Person changed = person;
            changed.role = kRoles[index];
            if (changed.role == Role::Foreman && person.role != Role::Foreman) {
                freshPin(
                    fromUtf8(person.name), changed.role,
                    [this, changed](const HeldPin& pin) { store(changed, pin); }, stop);
                return;
            }
            store(changed, {});
        },
        {}, stop);
}

void PeopleFlow::newPin(const Person& person) {
    freshPin(
        fromUtf8(person.name), person.role,
        [this, person](const HeldPin& pin) {
            m_desk.run<Result<void>>(
                this,
                [by = m_access, id = person.id, pin](Office& office) {
                    return office.givePin(by->who, id, *pin);
                },
                here<Result<void>>([this, person](const Result<void>& given) {
                    changePerson(person.id);
                    if (given) {
                        emit said(tr("%1 has a new PIN.").arg(fromUtf8(person.name)));
                    } else {
                        tell(given.error());
                    }
                }));
        },
        [this, id = person.id] { changePerson(id); });
}

CertificateState
PeopleFlow::certificate(std::string_view material, std::int64_t thicknessUm) const {
    const Instant now = m_floor.now();
    return certificateFor(
        people().certificate, m_atBench, material, thicknessUm, toIsoDate(now.utc, now.offset));
}

// One line by the keyboard, as it stands in the log.
void PeopleFlow::noteCertificate(const Person& person) {
    const auto noted = people().certificate.find(person.id);
    NameView view;
    view.title = tr("Which certificate has %1?").arg(fromUtf8(person.name));
    view.under = noted == people().certificate.end()
                     ? tr("As in: PE-HD, PP 3-20 mm until 2031-06-30")
                     : tr("For its materials it alone counts from then on.");
    view.line = tr("materials, thickness, last day");
    view.most = static_cast<int>(kLongestCertificate);
    view.back = hiddenSlot();
    view.stop = plainSlot(tr("Close"), tr("nothing is kept"));
    view.step = stepSlot(tr("Keep it"));
    m_name->setName({});
    m_name->show(view);
    if (noted != people().certificate.end()) {
        m_name->setName(certificateLine(noted->second.back()));
    }
    turnTo(m_name, {}, [this, id = person.id] { changePerson(id); });
    presses().step = [this, person] {
        const auto read = readCertificateLine(m_name->name());
        if (!read) {
            tell(read.error());
            return;
        }
        m_desk.run<Result<void>>(
            this,
            [by = m_access, id = person.id, certificate = *read](Office& office) {
                return office.noteCertificate(by->who, id, certificate);
            },
            here<Result<void>>([this, person](const Result<void>& kept) {
                changePerson(person.id);
                if (kept) {
                    emit said(tr("%1: the certificate is kept.").arg(fromUtf8(person.name)));
                } else {
                    tell(kept.error());
                }
            }));
    };
}

void PeopleFlow::store(const Person& changed, const HeldPin& pin) {
    m_desk.run<Result<void>>(
        this,
        [by = m_access, changed, pin](Office& office) {
            return office.changePerson(by->who, changed, copyOf(pin));
        },
        here<Result<void>>([this, changed](const Result<void>& done) {
            if (done && changed.id == m_atBench && !changed.active) {
                setAtBench({});
                m_asked = false;
            }
            if (done && changed.id == m_access->who.person() &&
                (!changed.active || changed.role != Role::Foreman)) {
                leave(); // no foreman any more
                return;
            }
            changePerson(changed.id);
            if (done) {
                emit said(tr("%1: kept.").arg(fromUtf8(changed.name)));
            } else {
                tell(done.error());
            }
        }));
}

// ---- the day's seal

void PeopleFlow::showDay(bool fromLog) {
    const Instant now = m_floor.now();
    m_day = {};
    m_day.day.day = toIsoDate(now.utc, now.offset);
    m_day.working = true;
    m_day.fromLog = fromLog;
    for (std::size_t i = 0; i < m_floor.posts().size(); ++i) {
        const Weld* weld = m_floor.weld(static_cast<int>(i));
        if (weld != nullptr && isOpen(weld->state)) {
            m_day.open.push_back(tr("Joint %1 on bench %2")
                                     .arg(weld->opened().number)
                                     .arg(m_floor.posts()[i].letter()));
        }
    }
    turnTo(
        m_seal,
        [this] {
            if (m_day.working) {
                return;
            }
            if (stepSeals(m_day)) {
                sealDay();
            } else if (m_day.savedTo.isEmpty()) {
                saveReport();
            } else {
                leave();
            }
        },
        [this, fromLog] { fromLog ? leave() : showDesk(); },
        [this] {
            if (!m_day.working) {
                saveReport();
            }
        });
    drawDay();
    m_desk.run<Result<DayClosing>>(
        this,
        [writer = &m_desk.writer(), day = m_day.day.day](Office&) {
            return readDayClosing(*writer, day);
        },
        here<Result<DayClosing>>([this](const Result<DayClosing>& read) {
            m_day.working = false;
            if (read) {
                m_day.day = *read;
            } else {
                m_day.refused = inWords(read.error().detail);
            }
            drawDay();
        }));
}

void PeopleFlow::drawDay() {
    m_seal->show(sealView(m_day));
}

void PeopleFlow::sealDay() {
    struct Sealed {
        std::optional<Error> refused;
        Result<DayClosing> day;
    };
    m_day.working = true;
    m_day.refused.clear();
    m_day.savedTo.clear();
    drawDay();
    m_desk.run<Sealed>(
        this,
        [by = m_access, writer = &m_desk.writer(), day = m_day.day.day](Office& office) {
            Sealed out{std::nullopt, DayClosing{}};
            if (const auto fact = office.seal(*by, day); !fact) {
                out.refused = fact.error();
            }
            out.day = readDayClosing(*writer, day);
            return out;
        },
        here<Sealed>([this](const Sealed& sealed) {
            m_day.working = false;
            if (sealed.refused) {
                m_day.refused = inWords(sealed.refused->detail);
            }
            if (sealed.day) {
                m_day.day = *sealed.day;
            } else {
                m_day.refused = inWords(sealed.day.error().detail);
            }
            drawDay();
        }));
}

void PeopleFlow::saveReport() {
    m_day.working = true;
    m_day.refused.clear();
    drawDay();
    m_desk.run<Result<QString>>(
        this,
        [log = m_desk.writer().path(), day = m_day.day.day, folder = m_reports](Office&) {
            return saveDayReport(log, day, folder);
        },
        here<Result<QString>>([this](const Result<QString>& saved) {
            m_day.working = false;
            if (saved) {
                m_day.savedTo = *saved;
            } else {
                m_day.refused = inWords(saved.error().detail);
            }
            drawDay();
        }));
}

} // namespace seamclock
