// A bus of the test's own with mocks of the login manager, the screen saver and UPower on it
// (python3-dbusmock), each a process that can be started, stopped and killed. It stands for the
// system's bus and the user's. What is held is asked of the mocks: the login manager's counts a
// descriptor as held until the kernel says that nobody has its other end, the screen saver's writes
// each call into its log.
#pragma once

#include <QDBusConnection>
#include <QDBusMessage>
#include <QProcess>
#include <QTemporaryDir>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace seamclock::test {

/// Lets events pass until `done`; false: not within some twenty seconds.
bool until(const std::function<bool()>& done);
/// Lets events pass for so many looks of at least 10 ms, for what must not happen.
void letPass(int looks = 30);

struct Inhibitor {
    std::string what;
    std::string who;
    std::string why;
    std::string mode;

    bool operator==(const Inhibitor&) const = default;
};

class BusRig {
public:
    BusRig();
    ~BusRig();
    BusRig(const BusRig&) = delete;
    BusRig& operator=(const BusRig&) = delete;

    QString address() const;
    void startBus();
    /// Its mocks end with it.
    void killBus();
    void signalBus(int number) const;

    void startLogin();
    void killLogin();
    /// SIGSTOP, SIGCONT.
    void signalLogin(int number) const;
    /// From now on it answers every Inhibit with this error; with a word in place of a descriptor;
    /// with what it should.
    void refuse(const std::string& errorName);
    void answerWithAWord();
    void allow();
    /// What is held of the login manager that runs.
    std::vector<Inhibitor> held() const;

    void startScreenSaver(int firstCookie = 1);
    void killScreenSaver();
    /// The calls that the screen saver which runs, or ran last, has had: "Inhibit …", "UnInhibit
    /// 7".
    std::vector<std::string> screenSaverCalls() const;

    void startUPower();
    void killUPower();
    /// UPower's own number for the state; the changes are told by signal.
    void setBattery(double percent, unsigned state, bool present = true);

private:
    std::unique_ptr<QProcess> start(const QString& program, const QStringList& words);
    std::unique_ptr<QProcess> startMock(const QStringList& words);
    void waitForName(const QString& name) const;
    std::string errors() const;
    QDBusMessage call(
        const char* service, const char* path, const char* interface, const char* method,
        const QVariantList& words) const;
    void answerInhibit(const char* signature, const QString& code) const;
    void connect();

    QTemporaryDir m_folder; // its name is short enough for a socket's
    QString m_connection;
    std::unique_ptr<QProcess> m_bus;
    std::unique_ptr<QProcess> m_login;
    std::unique_ptr<QProcess> m_screenSaver;
    std::unique_ptr<QProcess> m_upower;
    int m_logs = 0;
    QString m_screenSaverLog;
};

} // namespace seamclock::test
