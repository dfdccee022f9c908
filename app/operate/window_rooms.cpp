// The rooms beside the welds, as the window joins them: people, set-up, the day log, the shop and
// the guide.
#include "app/operate/window.h"
#include "app/text/words.h"
#include "core/weld/intent.h"

#include <utility>

namespace seamclock {

void Window::joinPeople() {
    connect(m_people, &PeopleFlow::turned, this, [this] { turnTo(PageKind::People); });
    connect(m_people, &PeopleFlow::left, this, [this] {
        if (m_kind == PageKind::People) { // else what the PIN was for leads on by itself
            turnTo(
                m_setup->page() != nullptr    ? PageKind::Setup
                : m_dayLog->page() != nullptr ? PageKind::Day
                : m_shop->page() != nullptr   ? PageKind::Shop
                                              : std::exchange(m_afterWho, PageKind::Weld));
        }
    });
    connect(m_people, &PeopleFlow::said, this, &Window::say);
}

void Window::joinSetup() {
    connect(m_setup, &SetupFlow::turned, this, [this] {
        if (m_kind != PageKind::People) { // a PIN's page stands; this one comes after it
            turnTo(PageKind::Setup);
        }
    });
    connect(m_setup, &SetupFlow::left, this, [this] { turnTo(PageKind::Weld); });
    connect(m_setup, &SetupFlow::said, this, &Window::say);
    connect(m_setup, &SetupFlow::kept, this, &Window::sayCalmly);
}

DayLogShop Window::dayLogShop() {
    DayLogShop shop;
    shop.log = m_parts.writer.path();
    shop.ask = [this](const QString& forWhat, std::function<void(const ProvenPerson&)> then) {
        m_people->askForeman(forWhat, std::move(then));
    };
    shop.act = [this](const std::string& weld, const WeldDetail& detail, const ProvenPerson& by) {
        return m_floor.judge(weld, detail, by);
    };
    shop.hasForeman = [this] { return !foremenWithPin(m_people->people()).empty(); };
    shop.materials = [this] { return m_floor.materials(); };
    shop.units = [this] { return m_parts.preferences.units; };
    shop.now = [this] { return m_floor.now(); };
    shop.folder = m_parts.reports;
    shop.work = m_parts.work;
    shop.closeDay = [this] { m_people->openSeal(); };
    for (const JobSeam& seam : m_parts.seams) {
        shop.job.push_back(seam.label);
        shop.jobName = seam.job;
    }
    return shop;
}

void Window::joinDayLog() {
    connect(m_dayLog, &DayLogFlow::turned, this, [this] {
        if (m_kind != PageKind::People) { // a PIN's page stands; this one comes after it
            turnTo(PageKind::Day);
        }
    });
    connect(m_dayLog, &DayLogFlow::left, this, [this](int bench) {
        bench >= 0 ? goToBench(bench) : turnTo(PageKind::Weld);
    });
    connect(m_dayLog, &DayLogFlow::said, this, &Window::say);
    connect(m_dayLog, &DayLogFlow::kept, this, &Window::sayCalmly);
}

ShopRoom Window::shopRoom() {
    ShopRoom room;
    room.log = m_parts.writer.path();
    room.ask = [this](const QString& forWhat, std::function<void(const ProvenPerson&)> then) {
        m_people->askForeman(forWhat, std::move(then));
    };
    room.hasForeman = [this] { return !foremenWithPin(m_people->people()).empty(); };
    room.benches = [this] { return m_floor.benches(); };
    room.letter = [this](const std::string& bench) {
        for (const Post& post : m_floor.posts()) {
            if (post.bench.bench.id == bench) {
                return post.letter();
            }
        }
        return fromUtf8(bench);
    };
    room.procedures = [this] { return m_floor.procedures(); };
    room.now = [this] { return m_floor.now(); };
    room.seams = m_parts.seams;
    room.folder = m_parts.reports;
    return room;
}

void Window::joinShop() {
    connect(m_shop, &ShopFlow::turned, this, [this] {
        if (m_kind != PageKind::People) { // a PIN's page stands; this one comes after it
            turnTo(PageKind::Shop);
        }
    });
    connect(m_shop, &ShopFlow::left, this, [this] { turnTo(PageKind::Weld); });
    connect(m_shop, &ShopFlow::said, this, &Window::say);
    connect(m_shop, &ShopFlow::kept, this, &Window::sayCalmly);
    connect(m_shop, &ShopFlow::seamsKept, this, &Window::takeUpSeams);
    connect(m_shop, &ShopFlow::jointAsked, this, [this](const QString& weld, qint64 number) {
        m_dayLog->openAt(weld.toStdString(), number);
        turnTo(PageKind::Day);
    });
}

void Window::joinGuide() {
    connect(&m_hands, &Hands::help, this, &Window::openHelp);
    connect(m_guide, &GuideFlow::turned, this, [this] { turnTo(PageKind::Guide); });
    connect(m_guide, &GuideFlow::left, this, [this] { turnTo(PageKind::Weld); });
    connect(m_guide, &GuideFlow::said, this, &Window::say);
}

// Who is at the bench is asked once, and never while seconds count.
void Window::askWho() {
    const bool free = m_kind == PageKind::Weld || m_kind == PageKind::Seams;
    if (!free || m_floor.isHurried() || !m_people->mustAsk()) {
        return;
    }
    m_people->openWho();
}

void Window::askForeman(const ReasonAnswer& answer) {
    const int post = m_floor.selected();
    const Weld* weld = m_floor.weld(post);
    if (weld == nullptr) {
        return;
    }
    m_people->askForeman(
        (answer.choice == kOtherMaterial ? tr("Joint %1 goes on with a sheet of another material.")
                                         : tr("Joint %1 goes on without this check."))
            .arg(weld->opened().number),
        [this, post, answer, id = weld->id()](const ProvenPerson& by) {
            told(m_floor.allow(post, id, answer, by));
        });
}

void Window::openDay() {
    m_dayLog->open();
    if (m_dayLog->page() != nullptr) { // also from a page of the people's, which it leaves
        turnTo(PageKind::Day);
    }
}

void Window::openHelp() {
    if (isFirst(kStatusCell)) {
        m_guide->open();
    }
}

void Window::openPractice() {
    for (int post = 0; post < static_cast<int>(m_floor.posts().size()); ++post) {
        const Weld* weld = m_floor.weld(post);
        if (weld != nullptr && isOpen(weld->state)) {
            say(tr("Bench %1 has an open weld. Practise when it is saved.")
                    .arg(m_floor.posts()[static_cast<std::size_t>(post)].letter()));
            return;
        }
    }
    emit practiceAsked();
}

void Window::openFirstSteps() {
    if (m_floor.isWelding()) {
        say(tr("A weld is open. The first steps come when it is saved."));
        return;
    }
    emit firstStepsAsked();
}

} // namespace seamclock
