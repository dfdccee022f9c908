#include "app/operate/preferences.h"

#include "tests/support/scratch_folder.h"

#include <fstream>
#include <gtest/gtest.h>

namespace seamclock {
namespace {

TEST(PreferencesFile, KeepsWhatWasSet) {
    const test::ScratchFolder folder;
    const QString file = QString::fromStdString(folder.file("settings.ini"));
    EXPECT_EQ(readPreferences(file), Preferences{});
    Preferences set;
    set.theme = ThemeKind::Contrast;
    set.mirrored = true;
    set.lessMotion = true;
    set.pedalKey = Qt::Key_F7;
    set.units = UnitSystem::Imperial;
    set.text = 1.25;
    set.dpi = 160;
    set.snapshotFolder = QStringLiteral("/share/Büro, hall 2");
    set.shop = QStringLiteral("Quillmere Vat Works, Söhne");
    writePreferences(set, file);
    EXPECT_EQ(readPreferences(file), set);
    set.snapshotFolder.clear();
    writePreferences(set, file);
    EXPECT_EQ(readPreferences(file), set);
}

TEST(PreferencesFile, WithWhatCantBeMeantIsAsIfItWereNotThere) {
    const test::ScratchFolder folder;
    std::ofstream(folder.file("settings.ini"))
        << "[screen]\ntheme=plaid\ntext=9\ndpi=-4\n[hands]\npedal_key=left\n[card]\nunits=cubits\n";
    EXPECT_EQ(readPreferences(QString::fromStdString(folder.file("settings.ini"))), Preferences{});
}

} // namespace
} // namespace seamclock
