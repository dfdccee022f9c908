// Every translated text 35 % longer, as screens.md allows for other languages: a translator that
// doubles vowels until it is. Numbers, marks for arguments and what is not translated stay.
#pragma once

#include <QCoreApplication>
#include <QTranslator>

namespace seamclock::test {

class LongerWords : public QTranslator {
public:
    LongerWords() { QCoreApplication::installTranslator(this); }
    ~LongerWords() override { QCoreApplication::removeTranslator(this); }

    bool isEmpty() const override { return false; }
    QString translate(const char*, const char* source, const char*, int) const override {
        const QString from = QString::fromUtf8(source);
        QString longer;
        const auto wanted = static_cast<qsizetype>(static_cast<double>(from.size()) * 1.35 + 0.5);
        qsizetype missing = wanted - from.size();
        for (const QChar each : from) {
            longer += each;
            if (missing > 0 && QStringLiteral("aeiouAEIOU").contains(each)) {
                longer += each.toLower();
                --missing;
            }
        }
        while (missing-- > 0) {
            longer += QLatin1Char('~');
        }
        return longer;
    }
};

} // namespace seamclock::test
