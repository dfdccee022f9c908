#include "app/operate/preferences.h"

#include <QLocale>
#include <QSettings>
#include <memory>

namespace seamclock {
namespace {

std::unique_ptr<QSettings> settingsIn(const QString& file) {
    return file.isEmpty()
               ? std::make_unique<QSettings>(
                     QSettings::IniFormat, QSettings::UserScope, "seamclock", "seamclock")
               : std::make_unique<QSettings>(file, QSettings::IniFormat);
}

const char* nameOf(ThemeKind theme) {
    switch (theme) {
    case ThemeKind::Dark:
        return "dark";
    case ThemeKind::Light:
        return "light";
    case ThemeKind::Contrast:
        return "contrast";
    }
    return "dark";
}

QString nameOf(UnitSystem units) {
    return QString::fromLatin1(toString(units).data());
}

} // namespace

Preferences readPreferences(const QString& file) {
    const auto settings = settingsIn(file);
    Preferences read;
    const QString theme = settings->value("screen/theme").toString();
    for (const ThemeKind kind : {ThemeKind::Dark, ThemeKind::Light, ThemeKind::Contrast}) {
        if (theme == QLatin1String(nameOf(kind))) {
            read.theme = kind;
        }
    }
    read.mirrored = settings->value("screen/left_handed", false).toBool();
    read.lessMotion = settings->value("screen/less_motion", false).toBool();
    read.units = settings->value("card/units").toString() == nameOf(UnitSystem::Imperial)
                     ? UnitSystem::Imperial
                     : UnitSystem::Metric;
    read.pedalKey = settings->value("hands/pedal_key", 0).toInt();
    const double text = settings->value("screen/text", 1.0).toDouble();
    for (const double size : kTextSizes) {
        read.text = text == size ? size : read.text;
    }
    const double dpi = settings->value("screen/dpi", 0.0).toDouble();
    read.dpi = dpi >= 50 && dpi <= 600 ? dpi : 0;
    // Until somebody chose one: the machine's, if it is spoken here.
    const QString language =
        settings->value("screen/language", QLocale::system().name()).toString();
    read.language = languageOf(language).value_or(Language::English);
    read.snapshotFolder = settings->value("log/snapshot_folder").toString();
    read.shop = settings->value("shop/name").toString().trimmed().left(kLongestShop);
    return read;
}

void writePreferences(const Preferences& preferences, const QString& file) {
    const auto settings = settingsIn(file);
    settings->setValue("screen/theme", nameOf(preferences.theme));
    settings->setValue("screen/left_handed", preferences.mirrored);
    settings->setValue("screen/less_motion", preferences.lessMotion);
    settings->setValue("card/units", nameOf(preferences.units));
    settings->setValue("screen/text", preferences.text);
    settings->setValue("screen/dpi", preferences.dpi);
    settings->setValue("screen/language", codeOf(preferences.language));
    settings->setValue("hands/pedal_key", preferences.pedalKey);
    settings->setValue("log/snapshot_folder", preferences.snapshotFolder);
    settings->setValue("shop/name", preferences.shop);
}

} // namespace seamclock
