#include "tests/app/power/bus_rig.h"

#include <QCoreApplication>
#include <QDBusArgument>
#include <QDBusConnectionInterface>
#include <QDBusVariant>
#include <QFile>
#include <QProcessEnvironment>
#include <cstdio>
#include <gtest/gtest.h>
#include <poll.h>
#include <signal.h>
#include <sys/prctl.h>

namespace seamclock::test {
namespace {

constexpr int kLookMs = 10;
constexpr int kLooks = 2'000;
constexpr auto kMock = "org.freedesktop.DBus.Mock";
constexpr auto kLogin = "org.freedesktop.login1";
constexpr auto kManager = "org.freedesktop.login1.Manager";

// Anybody may own and call anything, as only this test can reach its folder.
const char* const kConfiguration = R"(<!DOCTYPE busconfig PUBLIC
 "-//freedesktop//DTD D-Bus Bus Configuration 1.0//EN"
 "http://www.freedesktop.org/standards/dbus/1.0/busconfig.dtd">
<busconfig>
  <listen>%1</listen>
  <auth>EXTERNAL</auth>
  <policy context="default">
    <allow send_destination="*" eavesdrop="true"/>
    <allow eavesdrop="true"/>
    <allow own="*"/>
  </policy>
</busconfig>
)";

void end(std::unique_ptr<QProcess>& process) {
    if (process) {
        process->kill();
        process->waitForFinished();
        process.reset();
    }
}

} // namespace

bool until(const std::function<bool()>& done) {
    for (int i = 0; i < kLooks; ++i) {
        QCoreApplication::processEvents();
        if (done()) {
            return true;
        }
        ::poll(nullptr, 0, kLookMs);
    }
    return false;
}

void letPass(int looks) {
    for (int i = 0; i < looks; ++i) {
        QCoreApplication::processEvents();
        ::poll(nullptr, 0, kLookMs);
    }
}

BusRig::BusRig() : m_folder(QString(P_tmpdir) + "/seamclock-bus-XXXXXX") {
    startBus();
}

BusRig::~BusRig() {
    QDBusConnection::disconnectFromBus(m_connection);
    for (auto* process : {&m_login, &m_screenSaver, &m_upower, &m_bus}) {
        end(*process);
    }
}

QString BusRig::address() const {
    return "unix:path=" + m_folder.filePath("bus");
}

void BusRig::startBus() {
    const QString configuration = m_folder.filePath("bus.conf");
    QFile file(configuration);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(QString(kConfiguration).arg(address()).toUtf8());
    file.close();
    m_bus = start("dbus-daemon", {"--nofork", "--print-address", "--config-file=" + configuration});
    ASSERT_TRUE(m_bus->waitForReadyRead(20'000)) << "the bus doesn't start: " << errors();
    connect();
}

void BusRig::connect() {
    static int made = 0;
    QDBusConnection::disconnectFromBus(m_connection);
    m_connection = QString("bus-rig-%1").arg(made++);
    ASSERT_TRUE(QDBusConnection::connectToBus(address(), m_connection).isConnected());
}

void BusRig::killBus() {
    end(m_bus);
    for (auto* process : {&m_login, &m_screenSaver, &m_upower}) {
        end(*process);
    }
}

void BusRig::signalBus(int number) const {
    ::kill(static_cast<pid_t>(m_bus->processId()), number);
}

void BusRig::signalLogin(int number) const {
    ::kill(static_cast<pid_t>(m_login->processId()), number);
}

std::string BusRig::errors() const {
    QFile file(m_folder.filePath("errors"));
    return file.open(QIODevice::ReadOnly) ? file.readAll().toStdString() : std::string();
}

std::unique_ptr<QProcess> BusRig::start(const QString& program, const QStringList& words) {
    auto process = std::make_unique<QProcess>();
    QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
    environment.insert("DBUS_SYSTEM_BUS_ADDRESS", address());
    environment.insert("DBUS_SESSION_BUS_ADDRESS", address());
    process->setProcessEnvironment(environment);
    // They end with a test that is killed.
    process->setChildProcessModifier([] { ::prctl(PR_SET_PDEATHSIG, SIGKILL); });
    process->setStandardErrorFile(m_folder.filePath("errors"), QIODevice::Append);
    process->start(program, words);
    EXPECT_TRUE(process->waitForStarted()) << program.toStdString();
    return process;
}

std::unique_ptr<QProcess> BusRig::startMock(const QStringList& words) {
    return start(SEAMCLOCK_DEBIAN_PYTHON, QStringList{"-B", "-m", "dbusmock"} + words);
}

void BusRig::waitForName(const QString& name) const {
    QDBusConnectionInterface* bus = QDBusConnection(m_connection).interface();
    EXPECT_TRUE(until([&] { return bus->isServiceRegistered(name).value(); }))
        << name.toStdString() << " doesn't start: " << errors();
}

QDBusMessage BusRig::call(
    const char* service, const char* path, const char* interface, const char* method,
    const QVariantList& words) const {
    QDBusMessage question = QDBusMessage::createMethodCall(service, path, interface, method);
    question.setArguments(words);
    const QDBusMessage answer = QDBusConnection(m_connection).call(question);
    EXPECT_EQ(answer.type(), QDBusMessage::ReplyMessage)
        << method << ": " << answer.errorMessage().toStdString();
    return answer;
}

void BusRig::killLogin() {
    end(m_login);
}

void BusRig::killScreenSaver() {
    end(m_screenSaver);
}

void BusRig::killUPower() {
    end(m_upower);
}

void BusRig::startLogin() {
    m_login = startMock({"--system", "--template", "logind"});
    waitForName(kLogin);
}

void BusRig::answerInhibit(const char* signature, const QString& code) const {
    call(
        kLogin, "/org/freedesktop/login1", kMock, "AddMethod",
        {kManager, "Inhibit", "ssss", signature, code});
}

void BusRig::refuse(const std::string& errorName) {
    answerInhibit(
        "h", QString("raise dbus.exceptions.DBusException('not you', name='%1')")
                 .arg(QString::fromStdString(errorName)));
}

void BusRig::answerWithAWord() {
    answerInhibit("s", "ret = 'held'");
}

void BusRig::allow() {
    answerInhibit("h", "from dbusmock.templates.logind import Inhibit\nret = Inhibit(self, *args)");
}

std::vector<Inhibitor> BusRig::held() const {
    const QDBusMessage answer =
        call(kLogin, "/org/freedesktop/login1", kManager, "ListInhibitors", {});
    std::vector<Inhibitor> all;
    if (answer.arguments().isEmpty()) {
        return all;
    }
    const auto list = answer.arguments().constFirst().value<QDBusArgument>();
    list.beginArray();
    while (!list.atEnd()) {
        QString what;
        QString who;
        QString why;
        QString mode;
        quint32 user = 0;
        quint32 process = 0;
        list.beginStructure();
        list >> what >> who >> why >> mode >> user >> process;
        list.endStructure();
        all.push_back(
            {what.toStdString(), who.toStdString(), why.toStdString(), mode.toStdString()});
    }
    list.endArray();
    return all;
}

void BusRig::startScreenSaver(int firstCookie) {
    m_screenSaverLog = m_folder.filePath(QString("screen-saver-%1").arg(m_logs++));
    m_screenSaver = startMock(
        {"--session", "--template", SEAMCLOCK_SOURCE_DIR "/tests/app/power/screen_saver_mock.py",
         "--logfile", m_screenSaverLog, "--parameters",
         QString("{\"first\": %1}").arg(firstCookie)});
    waitForName("org.freedesktop.ScreenSaver");
}

std::vector<std::string> BusRig::screenSaverCalls() const {
    QFile file(m_screenSaverLog);
    std::vector<std::string> all;
    if (!file.open(QIODevice::ReadOnly)) {
        return all;
    }
    for (const QByteArray& line : file.readAll().split('\n')) {
        const QByteArray said = line.mid(line.indexOf(' ') + 1); // behind the time
        if (said.startsWith("Inhibit ") || said.startsWith("UnInhibit ")) {
            all.push_back(said.toStdString());
        }
    }
    return all;
}

void BusRig::startUPower() {
    m_upower = startMock({"--system", "--template", "upower"});
    waitForName("org.freedesktop.UPower");
}

void BusRig::setBattery(double percent, unsigned state, bool present) {
    const auto variant = [](const QVariant& value) {
        return QVariant::fromValue(QDBusVariant(value));
    };
    const char* const device = "/org/freedesktop/UPower/devices/DisplayDevice";
    const QList<std::pair<QString, QVariant>> all{
        {"Percentage", percent}, {"State", state}, {"IsPresent", present}};
    for (const auto& [name, value] : all) {
        call(
            "org.freedesktop.UPower", device, "org.freedesktop.DBus.Properties", "Set",
            {"org.freedesktop.UPower.Device", name, variant(value)});
    }
}

} // namespace seamclock::test
