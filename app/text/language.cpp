#include "app/text/language.h"

#include <QCoreApplication>
#include <QTranslator>
#include <memory>

namespace seamclock {
namespace {

/// Finds a phrase whoever asks for it.
class Phrases : public QTranslator {
public:
    using QTranslator::QTranslator;

    QString translate(
        const char* /*context*/, const char* source, const char* disambiguation,
        int n) const override {
        return QTranslator::translate("seamclock", source, disambiguation, n);
    }
};

struct Speaker {
    Language language = Language::English;
    std::unique_ptr<Phrases> phrases; // none in English
};

Speaker& speaker() {
    static Speaker one;
    return one;
}

} // namespace

QString codeOf(Language language) {
    switch (language) {
    case Language::English:
        return "en";
    case Language::German:
        return "de";
    case Language::Spanish:
        return "es";
    }
    return "en";
}

QString ownNameOf(Language language) {
    switch (language) {
    case Language::English:
        return "English";
    case Language::German:
        return "Deutsch";
    case Language::Spanish:
        return QString::fromUtf8("Espa\u00f1ol");
    }
    return "English";
}

std::optional<Language> languageOf(const QString& code) {
    for (const Language one : kLanguages) {
        if (code == codeOf(one) || code.startsWith(codeOf(one) + '_') ||
            code.startsWith(codeOf(one) + '-')) {
            return one;
        }
    }
    return std::nullopt;
}

void speak(Language language) {
    Speaker& now = speaker();
    if (now.phrases) {
        QCoreApplication::removeTranslator(now.phrases.get());
        now.phrases.reset();
    }
    now.language = language;
    const QLocale machine = QLocale::system();
    QLocale::setDefault(
        languageOf(machine.name()) == language ? machine : QLocale(codeOf(language)));
    if (language == Language::English) {
        return;
    }
    auto phrases = std::make_unique<Phrases>();
    // They are in the program itself: without them it would not have been built.
    if (phrases->load(":/translations/seamclock_" + codeOf(language) + ".qm")) {
        QCoreApplication::installTranslator(phrases.get());
        now.phrases = std::move(phrases);
    }
}

Language spoken() {
    return speaker().language;
}

} // namespace seamclock
