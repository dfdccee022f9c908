#include "app/pages/desk.h"

namespace seamclock {

Desk::Desk(
    std::unique_ptr<Credentials> credentials, Office office, LogWriterBase& writer,
    const Clock& clock)
    : m_credentials(std::move(credentials)), m_office(std::move(office)), m_writer(writer),
      m_clock(clock), m_people(look()) {
    m_thread.setMaxThreadCount(1);
}

Result<std::unique_ptr<Desk>> Desk::open(LogWriterBase& writer, const Clock& clock) {
    auto credentials = std::make_unique<Credentials>(writer.path() + ".credentials");
    auto office = Office::open(writer, *credentials, clock);
    if (!office) {
        return tl::unexpected<Error>(office.error());
    }
    return std::unique_ptr<Desk>(
        new Desk(std::move(credentials), std::move(*office), writer, clock));
}

Desk::~Desk() {
    m_thread.waitForDone();
}

DeskPeople Desk::look() const {
    DeskPeople now;
    now.people = m_office.roster().people;
    now.certificate = m_office.roster().certificate;
    for (const Person& person : now.people) {
        // Where the file of secrets can't be read, a PIN is asked for, and that says why.
        if (m_credentials->hasPin(person.id).value_or(true)) {
            now.withPin.insert(person.id);
        }
    }
    return now;
}

void Desk::enter(
    QObject* asker, const std::string& person, HeldPin pin,
    const std::function<void(const Entry&)>& then) {
    run<Entry>(
        asker,
        [this, person, pin = std::move(pin)](Office& office) {
            Entry entry;
            auto access = office.enter(person, *pin);
            if (access) {
                entry.access = std::make_shared<const Access>(std::move(*access));
            } else {
                entry.error = access.error();
                entry.pause = m_credentials->pause(person, m_clock.now()).value_or(Milliseconds(0));
            }
            return entry;
        },
        then);
}

void Desk::askPause(
    QObject* asker, const std::string& person, const std::function<void(Milliseconds)>& then) {
    run<Milliseconds>(
        asker,
        [this, person](Office&) {
            return m_credentials->pause(person, m_clock.now()).value_or(Milliseconds(0));
        },
        [then](const Milliseconds& pause) { then(pause); });
}

} // namespace seamclock
