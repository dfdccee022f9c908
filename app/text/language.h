// The languages that the program speaks, and the change from one to another while it runs. Core
// speaks codes; every word of the screens goes through tr(), and all phrases of a language stand in
// one context (resources/translations), so that the same English has the same words everywhere.
#pragma once

#include <QLocale>
#include <QString>
#include <array>
#include <optional>

namespace seamclock {

enum class Language { English, German, Spanish };

inline constexpr std::array kLanguages{Language::English, Language::German, Language::Spanish};

/// ISO 639-1: "en", "de", "es".
QString codeOf(Language language);
/// In itself, as who speaks it looks for it: "Deutsch".
QString ownNameOf(Language language);
/// Of a code, also with a territory behind it ("de_AT"); none of one that isn't spoken here.
std::optional<Language> languageOf(const QString& code);

/// From now on words, numbers and dates are of this language, with the territory of the machine's
/// own locale where that has the same language. What is on a screen must be shown anew. In the
/// thread of the application.
void speak(Language language);
Language spoken();

} // namespace seamclock
