// The office on a thread of its own, for a window that must not wait: proving a PIN takes a good
// tenth of a second, a seal waits for the disk. Errands are done one after the other; what comes of
// each is told on the window's thread, and the people as they then are with it. What an errand
// holds of PINs and proofs goes when it is done.
#pragma once

#include "core/session/office.h"

#include <QObject>
#include <QPointer>
#include <QThreadPool>
#include <functional>
#include <map>
#include <memory>
#include <set>
#include <string>
#include <vector>

namespace seamclock {

/// Who works here, and who of them has a PIN on this tablet.
struct DeskPeople {
    std::vector<Person> people; // in the order in which they came
    std::set<std::string> withPin;
    std::map<std::string, HeldCertificates>
        certificate; // by person; empty: the shop keeps none here

    bool hasPin(const Person& person) const { return withPin.count(person.id) > 0; }
    bool operator==(const DeskPeople&) const = default;
};

/// Can be held by a page and by an errand at once; whoever is last lets the key go.
using Proof = std::shared_ptr<const Access>;
using HeldPin = std::shared_ptr<const Pin>;

/// What came of a PIN.
struct Entry {
    Proof access; // null: was not let in
    Error error;
    Milliseconds pause{0}; // until the next try counts
};

class Desk : public QObject {
    Q_OBJECT

public:
    /// With the file of secrets beside the log. Writer and clock must outlive it. Errors as
    /// Office::open.
    static Result<std::unique_ptr<Desk>> open(LogWriterBase& writer, const Clock& clock);
    /// Waits for the errand that is under way, and does those that stand behind it.
    ~Desk() override;

    const DeskPeople& people() const { return m_people; }
    LogWriterBase& writer() const { return m_writer; }
    /// Errands whose end was not told yet.
    bool isBusy() const { return m_running > 0; }

    /// `then` is called unless `asker` is gone by that time.
    void enter(
        QObject* asker, const std::string& person, HeldPin pin,
        const std::function<void(const Entry&)>& then);
    /// How long that person must wait before a try counts.
    void askPause(
        QObject* asker, const std::string& person, const std::function<void(Milliseconds)>& then);

    /// `work` is done on the desk's thread and must not touch what belongs to the window.
    template <class T>
    void
    run(QObject* asker, std::function<T(Office&)> work, const std::function<void(const T&)>& then) {
        ++m_running;
        const QPointer<QObject> guard(asker);
        m_thread.start([this, work = std::move(work), then, guard]() mutable {
            auto result = std::make_shared<const T>(work(m_office));
            work = nullptr;
            QMetaObject::invokeMethod(
                this,
                [this, result = std::move(result), now = look(), then, guard] {
                    --m_running;
                    m_people = now;
                    if (guard) {
                        then(*result);
                    }
                },
                Qt::QueuedConnection);
        });
    }

private:
    Desk(
        std::unique_ptr<Credentials> credentials, Office office, LogWriterBase& writer,
        const Clock& clock);
    DeskPeople look() const;

    std::unique_ptr<Credentials> m_credentials;
    Office m_office; // touched by the desk's thread alone
    LogWriterBase& m_writer;
    const Clock& m_clock;
    DeskPeople m_people;
    int m_running = 0;
    QThreadPool m_thread; // last: it ends before what it works with
};

} // namespace seamclock
