// One connection to a bus, opened again when it was lost. Opening waits for the bus's answer, so
// this lives in a thread of its own (stay_awake.h).
#pragma once

#include "app/power/power_state.h"

#include <QDBusConnection>
#include <QObject>
#include <QTimer>

namespace seamclock {

class BusLine : public QObject {
    Q_OBJECT

public:
    enum class Bus { System, Session };

    BusLine(Bus bus, const PowerSources& sources, QObject* parent);
    ~BusLine() override;

    void open();

signals:
    void came(const QDBusConnection& bus);
    void lost();

private slots:
    void end(); // the bus's own farewell

private:
    void close();

    Bus m_bus;
    QString m_address;
    QString m_name; // of the connection, while there is one
    QTimer m_retry;
};

} // namespace seamclock
