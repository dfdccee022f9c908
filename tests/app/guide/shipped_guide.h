// The guide that comes with the program, and the phrases that its screens know.
#pragma once

#include "app/guide/guide.h"

#include <QFile>
#include <QSet>
#include <QString>
#include <QXmlStreamReader>
#include <gtest/gtest.h>

namespace seamclock::test {

inline QString sourceFolder() {
    return QString::fromUtf8(SEAMCLOCK_SOURCE_DIR);
}

inline Guide shippedGuide(const QStringList& pictures = {}) {
    const auto guide = readGuide(sourceFolder() + "/docs/guide", pictures);
    EXPECT_TRUE(guide) << guide.error().detail;
    return guide ? *guide : Guide();
}

/// In English, as a translator finds them (packaging/phrases.py holds that file against the
/// sources).
inline QSet<QString> phrasesOfTheScreens() {
    QFile file(sourceFolder() + "/resources/translations/seamclock_de.ts");
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));
    QXmlStreamReader xml(&file);
    QSet<QString> all;
    while (!xml.atEnd()) {
        if (xml.readNextStartElement() && xml.name() == QLatin1String("source")) {
            all.insert(xml.readElementText());
        }
    }
    EXPECT_GT(all.size(), 500);
    return all;
}

} // namespace seamclock::test
