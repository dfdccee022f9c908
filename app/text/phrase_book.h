// Core's English sentences in the language of the screens. Core says why something was refused in
// one English sentence, for logs and scripts, made of templates that stand as literals in its
// sources. packaging/phrases.py collects them ("{}" is a value, "{#}" a number, "{=}" a name) and
// the lessons' texts; they are part of the program. The one that fits a sentence, leaves least of
// it English and has most signs of its own is translated and gets the values back, each of which is
// tried itself: a sentence stands inside a sentence, a code or a word inside both. What joins two
// sentences (": ", "; ") parts them. A value in quotation marks is a name that somebody gave and
// stays. What is not in the book stays English: better than a sentence of ours that says something
// else. Whatever a window or a paper shows of core's English goes through here. In any thread.
#pragma once

#include <QString>
#include <QStringList>
#include <string_view>
#include <vector>

namespace seamclock {

/// The sentence in the language that is spoken; in English as it came.
QString inWords(std::string_view english);
QString inWords(const QString& english);
/// Likewise, with a large first letter and a full stop, as it stands alone.
QString sentenceOf(std::string_view english);

/// A text that the log or a document holds, a source or a reason: what the program itself wrote,
/// and who attested a value, is said in words; what a person or a document says stays as it was
/// written.
QString storedWords(std::string_view english);
/// A code of core's as the screens say it, "plate_out"; one that has no word, with blanks for its
/// underscores.
QString wordOf(std::string_view code);

/// The templates as packaging/phrases.py wrote them, and which fit the whole of a sentence: those
/// with the most text of their own first. For the book's tests.
struct PhraseFit {
    QString phrase;
    int weight = 0; // signs of its own
    QStringList values;
};
const QStringList& phrasesOfCore();
std::vector<PhraseFit> phrasesThatFit(const QString& sentence);

} // namespace seamclock
