#include "app/guide/pdf_outline.h"

#include <QRegularExpression>
#include <optional>

namespace seamclock {
namespace {

constexpr int kEntry = 20; // bytes of an object's line in the table

tl::unexpected<Error> notSuch(const std::string& why) {
    return fail(ErrorCode::Malformed, "the PDF can't be given bookmarks: " + why);
}

std::optional<qsizetype> numberIn(const QByteArray& text, const char* pattern) {
    const auto match = QRegularExpression(QLatin1String(pattern)).match(QString::fromLatin1(text));
    return match.hasMatch() ? std::optional<qsizetype>(match.captured(1).toLongLong())
                            : std::nullopt;
}

/// What QPdfWriter wrote, from its end.
class Written {
public:
    explicit Written(const QByteArray& pdf) : m_pdf(pdf) {
        const qsizetype end = pdf.lastIndexOf("trailer");
        if (end < 0) {
            return;
        }
        const QByteArray trailer = pdf.mid(end);
        table = numberIn(trailer, "startxref\\s+(\\d+)");
        size = numberIn(trailer, "/Size (\\d+)");
        root = numberIn(trailer, "/Root (\\d+) 0 R");
        info = numberIn(trailer, "/Info (\\d+) 0 R");
    }

    bool isWhole() const { return table && size && root && info; }

    /// From "<<" to ">>"; empty: there is none such.
    QByteArray object(qsizetype number) const {
        const QByteArray head = "xref\n0 " + QByteArray::number(*size) + '\n';
        if (number < 0 || number >= *size || m_pdf.mid(*table, head.size()) != head) {
            return {};
        }
        const QByteArray entry = m_pdf.mid(*table + head.size() + number * kEntry, kEntry);
        const qsizetype at = entry.left(10).toLongLong();
        const QByteArray begin = QByteArray::number(number) + " 0 obj\n";
        const qsizetype end = m_pdf.indexOf("\nendobj", at);
        if (m_pdf.mid(at, begin.size()) != begin || end < 0) {
            return {};
        }
        return m_pdf.mid(at + begin.size(), end - at - begin.size());
    }

    std::optional<qsizetype> table;
    std::optional<qsizetype> size;
    std::optional<qsizetype> root;
    std::optional<qsizetype> info;

private:
    const QByteArray& m_pdf;
};

std::vector<qsizetype> pagesOf(const QByteArray& tree) {
    std::vector<qsizetype> pages;
    const qsizetype from = tree.indexOf("/Kids");
    const QString kids = QString::fromLatin1(tree.mid(from, tree.indexOf(']', from) - from));
    static const QRegularExpression kPage(QStringLiteral("(\\d+) 0 R"));
    for (auto each = kPage.globalMatch(kids); each.hasNext();) {
        pages.push_back(each.next().captured(1).toLongLong());
    }
    return pages;
}

/// As UTF-16 with its mark of order, in hexadecimal digits.
QByteArray textOf(const QString& title) {
    QByteArray bytes = "<FEFF";
    for (const QChar sign : title) {
        bytes += QByteArray::number(sign.unicode(), 16).rightJustified(4, '0').toUpper();
    }
    return bytes + '>';
}

QByteArray reference(qsizetype object) {
    return QByteArray::number(object) + " 0 R";
}

/// New objects and their lines in a table of their own.
class Update {
public:
    explicit Update(QByteArray pdf) : m_pdf(std::move(pdf)) {}

    void object(qsizetype number, const QByteArray& body) {
        const QByteArray at = QByteArray::number(m_pdf.size()).rightJustified(10, '0');
        m_entries += QByteArray::number(number) + " 1\n" + at + " 00000 n \n";
        m_pdf += QByteArray::number(number) + " 0 obj\n" + body + "\nendobj\n";
    }
    QByteArray ended(const Written& before, qsizetype size) {
        const QByteArray table = QByteArray::number(m_pdf.size());
        m_pdf += "xref\n" + m_entries + "trailer\n<<\n/Size " + QByteArray::number(size) +
                 "\n/Info " + reference(*before.info) + "\n/Root " + reference(*before.root) +
                 "\n/Prev " + QByteArray::number(*before.table) + "\n>>\nstartxref\n" + table +
                 "\n%%EOF\n";
        return m_pdf;
    }

private:
    QByteArray m_pdf;
    QByteArray m_entries;
};

} // namespace

Result<QByteArray> withBookmarks(const QByteArray& pdf, const std::vector<Bookmark>& bookmarks) {
    const Written before(pdf);
    if (!before.isWhole()) {
        return notSuch("its end names no table, catalog or size");
    }
    QByteArray catalog = before.object(*before.root);
    const auto tree = numberIn(catalog, "/Pages (\\d+) 0 R");
    const qsizetype close = catalog.lastIndexOf(">>");
    if (!tree || close < 0) {
        return notSuch("its catalog names no pages");
    }
    const std::vector<qsizetype> pages = pagesOf(before.object(*tree));
    const auto last = static_cast<qsizetype>(bookmarks.size());
    if (last == 0) {
        return pdf;
    }
    const qsizetype outline = *before.size; // its entries follow it
    Update update(pdf);
    update.object(
        *before.root,
        catalog.insert(close, "/Outlines " + reference(outline) + "\n/PageMode /UseOutlines\n"));
    update.object(
        outline, "<<\n/Type /Outlines\n/First " + reference(outline + 1) + "\n/Last " +
                     reference(outline + last) + "\n/Count " + QByteArray::number(last) + "\n>>");
    for (qsizetype i = 1; i <= last; ++i) {
        const Bookmark& one = bookmarks[static_cast<std::size_t>(i - 1)];
        if (one.page < 1 || one.page > static_cast<int>(pages.size())) {
            return notSuch(
                "\"" + one.title.toStdString() + "\" is on page " + std::to_string(one.page) +
                "; allowed: 1 to " + std::to_string(pages.size()));
        }
        const qsizetype page = pages[static_cast<std::size_t>(one.page - 1)];
        const auto top = numberIn(before.object(page), "/MediaBox \\[0 0 [\\d.]+ (\\d+)");
        QByteArray body = "<<\n/Title " + textOf(one.title) + "\n/Parent " + reference(outline);
        body += i > 1 ? "\n/Prev " + reference(outline + i - 1) : QByteArray();
        body += i < last ? "\n/Next " + reference(outline + i + 1) : QByteArray();
        body += "\n/Dest [" + reference(page) + " /XYZ 0 " + QByteArray::number(top.value_or(0)) +
                " null]\n>>";
        update.object(outline + i, body);
    }
    return update.ended(before, outline + last + 1);
}

} // namespace seamclock
