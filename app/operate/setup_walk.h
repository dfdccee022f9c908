// Set-up walked through by presses and typed lines as a foreman makes them, for pictures and tests.
// It begins with the log of PeopleWalk, in which a foreman has a PIN. Nothing here is shown to a
// person at work.
#pragma once

#include "app/operate/people_walk.h"

namespace seamclock {

class SetupWalk {
public:
    using Picture = Walk::Picture;
    /// `demo`: the folder with the demo's procedure file and calibration; `scratch`: where the walk
    /// puts files of its own.
    SetupWalk(Window& window, Desk& desk, PeopleWalk& people, QString demo, QString scratch);

    /// Every page. Refused: a press that led nowhere, with the sentence.
    Result<void> all(const char* pin, const Picture& picture);

    Result<void> open();
    /// The demo's file with a plate of 410 °C, which is put right before it can be kept.
    Result<void> importProcedure(const char* pin, const Picture& picture = {});
    /// From the list: so many values of that table, against that edition.
    Result<void> attest(
        const QString& row, const QString& table, int values, const char* pin,
        const Picture& picture = {});
    /// From the list to the sections of that procedure's or bench's form.
    Result<void> edit(const QString& row);
    /// Of the form that stands.
    Result<void> section(const QString& title);
    Result<void> type(const std::string& pointer, const QString& text);
    Result<void> act(const QString& words);
    Result<void> keep(const char* pin);
    /// From the east bench's form: a bent calibration is refused, the demo's is read.
    Result<void> calibrate(const Picture& picture = {});
    Result<void> releaseOrder(const Picture& picture = {});
    /// The heat in the sheet with a late changeover, and by the plan again.
    Result<void> whatIf(const Picture& picture = {});

    /// The row that begins so, of the list that stands.
    Result<void> choose(const QString& words);
    Result<void> press(SlotPlace place);
    Result<void> readFile(const QString& path);

private:
    void take(const Picture& picture, const QString& name);
    Result<void> expect(const Page* page, const std::string& what) const;
    Result<QString> written(const QString& name, const QByteArray& bytes) const;

    Window& m_window;
    Desk& m_desk;
    PeopleWalk& m_people;
    QString m_demo;
    QString m_scratch;
};

} // namespace seamclock
