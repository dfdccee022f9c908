#include "app/guide/guide_document.h"

#include "app/parts/type.h"
#include "app/print/paper_page.h"

#include <QDir>
#include <QFileInfo>
#include <QImage>
#include <QRegularExpression>
#include <QTextBlock>
#include <QTextCursor>
#include <QTextFrame>
#include <QTextTable>
#include <QUrl>
#include <algorithm>
#include <map>
#include <vector>

namespace seamclock {
namespace {

constexpr double kTitle = 1.7; // over the body's letters
constexpr double kHeading = 1.25;
constexpr double kCode = 0.88;
constexpr double kLine = 118; // [%]

QString pathOf(const Guide& guide, const QString& name) {
    for (const QString& folder : guide.pictures) {
        const QString path = QDir(folder).filePath(name);
        if (QFileInfo(path).isFile()) {
            return path;
        }
    }
    return {};
}

/// The Markdown without pictures that aren't there, and the images of those that are, by name.
QString withPictures(std::map<QString, QImage>& images, const Guide& guide, QString text) {
    static const QRegularExpression kPicture(QStringLiteral("!\\[[^\\]]*\\]\\(([^)]*)\\)\\n?"));
    qsizetype from = 0;
    for (auto found = kPicture.match(text, from); found.hasMatch();
         found = kPicture.match(text, from)) {
        const QString name = found.captured(1);
        const QString path = pathOf(guide, name);
        const QImage image = path.isEmpty() ? QImage() : QImage(path);
        if (image.isNull()) {
            text.remove(found.capturedStart(), found.capturedLength());
            from = found.capturedStart();
        } else {
            images[name] = image;
            from = found.capturedEnd();
        }
    }
    return text;
}

class Setter {
public:
    Setter(QTextDocument& document, const GuideLook& look) : m_document(document), m_look(look) {}

    void set() {
        QTextCursor whole(&m_document);
        whole.beginEditBlock(); // laid out once, at its end
        for (QTextBlock block = m_document.begin(); block.isValid(); block = block.next()) {
            setBlock(block);
        }
        tables(m_document.rootFrame());
        QTextFrameFormat root = m_document.rootFrame()->frameFormat();
        root.setMargin(0);
        m_document.rootFrame()->setFrameFormat(root);
        whole.endEditBlock();
    }

private:
    double px(double letters) const { return m_look.unit * m_look.letters * letters; }

    QFont font(double letters, QFont::Weight weight) const {
        return m_look.forPaper ? paperFont(px(letters), weight) : partFont(px(letters), weight);
    }

    struct Run {
        int from = 0;
        int length = 0;
        QTextCharFormat format;
    };

    static std::vector<Run> runsOf(const QTextBlock& block) {
        std::vector<Run> runs;
        for (auto at = block.begin(); !at.atEnd(); ++at) {
            const QTextFragment piece = at.fragment();
            runs.push_back({piece.position(), piece.length(), piece.charFormat()});
        }
        return runs;
    }

    void setBlock(const QTextBlock& block) {
        const QTextBlockFormat was = block.blockFormat();
        const int level = was.headingLevel();
        const bool code = was.hasProperty(QTextFormat::BlockCodeFence) ||
                          was.hasProperty(QTextFormat::BlockCodeLanguage);
        const bool caution = was.intProperty(QTextFormat::BlockQuoteLevel) > 0;
        const bool inTable = QTextCursor(block).currentTable() != nullptr;
        for (const Run& run : runsOf(block)) {
            if (run.format.isImageFormat()) {
                picture(run);
            } else {
                words(run, level, code, caution);
            }
        }
        QTextBlockFormat format;
        format.setHeadingLevel(level);
        format.setLineHeight(kLine, QTextBlockFormat::ProportionalHeight);
        if (block.textList() != nullptr) {
            format.setObjectIndex(was.objectIndex());
            format.setBottomMargin(px(0.25));
        } else if (level > 0) {
            format.setTopMargin(level == 1 ? 0 : px(1.1));
            format.setBottomMargin(px(level == 1 ? 0.6 : 0.4));
            format.setPageBreakPolicy(QTextFormat::PageBreak_Auto);
        } else if (code) {
            format.setBackground(m_look.raised);
            format.setLeftMargin(px(0.6));
            const bool last = !isCode(block.next());
            format.setBottomMargin(last ? px(0.7) : 0);
        } else if (caution) {
            format.setBackground(m_look.caution);
            format.setLeftMargin(px(0.6));
            format.setBottomMargin(px(0.5));
        } else if (!inTable) {
            format.setBottomMargin(px(0.6));
        }
        QTextCursor cursor(block);
        cursor.setBlockFormat(format);
    }

    static bool isCode(const QTextBlock& block) {
        return block.isValid() && (block.blockFormat().hasProperty(QTextFormat::BlockCodeFence) ||
                                   block.blockFormat().hasProperty(QTextFormat::BlockCodeLanguage));
    }

    QTextCursor over(const Run& run) const {
        QTextCursor cursor(&m_document);
        cursor.setPosition(run.from);
        cursor.setPosition(run.from + run.length, QTextCursor::KeepAnchor);
        return cursor;
    }

    void words(const Run& run, int level, bool code, bool caution) {
        const bool fixed = code || run.format.fontFixedPitch();
        const bool bold = run.format.fontWeight() >= QFont::DemiBold || level > 0;
        const double letters = level == 1 ? kTitle : level > 1 ? kHeading : fixed ? kCode : 1.0;
        QTextCharFormat format;
        QFont made = font(letters, bold ? kWordWeight : kPlainWeight);
        if (fixed) {
            made.setFamilies({QStringLiteral("DejaVu Sans Mono"), QStringLiteral("monospace")});
            made.setFixedPitch(true);
        }
        made.setItalic(run.format.fontItalic());
        format.setFont(made);
        format.setForeground(caution ? m_look.onCaution : fixed ? m_look.soft : m_look.text);
        if (run.format.isAnchor()) {
            format.setAnchor(true);
            format.setAnchorHref(run.format.anchorHref());
            format.setFontUnderline(!m_look.forPaper);
        }
        over(run).setCharFormat(format);
    }

    void picture(const Run& run) {
        QTextImageFormat format = run.format.toImageFormat();
        const QImage image =
            m_document.resource(QTextDocument::ImageResource, QUrl(format.name())).value<QImage>();
        if (image.isNull()) {
            return;
        }
        const double wide = std::min(m_look.widest, px(32.0));
        format.setWidth(wide);
        format.setHeight(wide * image.height() / image.width());
        over(run).setCharFormat(format);
    }

    void tables(QTextFrame* within) {
        for (QTextFrame* frame : within->childFrames()) {
            if (auto* table = qobject_cast<QTextTable*>(frame)) {
                setTable(*table);
            }
            tables(frame);
        }
    }

    /// Columns by how much stands in them; the narrowest keep room for a word.
    void setTable(QTextTable& table) {
        // The reader of Markdown begins a table's first cell with an empty line.
        QTextCursor first = table.cellAt(0, 0).firstCursorPosition();
        if (first.block().length() == 1 &&
            first.position() < table.cellAt(0, 0).lastCursorPosition().position()) {
            first.deleteChar();
        }
        std::vector<double> letters(static_cast<std::size_t>(table.columns()), 0.0);
        double sum = 0;
        for (int column = 0; column < table.columns(); ++column) {
            double most = 0;
            double all = 0;
            for (int row = 0; row < table.rows(); ++row) {
                const QTextTableCell cell = table.cellAt(row, column);
                const auto length = static_cast<double>(
                    cell.lastCursorPosition().position() - cell.firstCursorPosition().position());
                most = std::max(most, length);
                all += length;
                if (row == 0) {
                    QTextTableCellFormat head = cell.format().toTableCellFormat();
                    head.setBackground(m_look.raised);
                    table.cellAt(row, column).setFormat(head);
                }
            }
            double& share = letters[static_cast<std::size_t>(column)];
            share = std::clamp(std::max(all / table.rows(), most * 0.6), 12.0, 60.0);
            sum += share;
        }
        QTextTableFormat format = table.format();
        format.setWidth(QTextLength(QTextLength::PercentageLength, 100));
        QList<QTextLength> widths;
        for (const double share : letters) {
            widths << QTextLength(QTextLength::PercentageLength, share / sum * 100);
        }
        format.setColumnWidthConstraints(widths);
        format.setBorder(std::max(1.0, m_look.unit * (m_look.forPaper ? 0.5 : 1.0)));
        format.setBorderBrush(m_look.edge);
        format.setBorderStyle(QTextFrameFormat::BorderStyle_Solid);
        format.setBorderCollapse(true);
        format.setCellPadding(px(0.3));
        format.setCellSpacing(0);
        format.setHeaderRowCount(1);
        format.setTopMargin(px(0.3));
        format.setBottomMargin(px(0.8));
        table.setFormat(format);
    }

    QTextDocument& m_document;
    const GuideLook& m_look;
};

} // namespace

void setChapter(
    QTextDocument& document, const Guide& guide, const GuideChapter& chapter,
    const GuideLook& look) {
    document.clear();
    document.setUndoRedoEnabled(false);
    document.setDocumentMargin(0);
    document.setIndentWidth(look.unit * look.letters * 1.6);
    document.setDefaultFont(partFont(look.unit * look.letters, kPlainWeight));
    std::map<QString, QImage> images;
    document.setMarkdown(withPictures(images, guide, chapter.text));
    for (const auto& [name, image] : images) { // a document forgets them when it is set
        document.addResource(QTextDocument::ImageResource, QUrl(name), image);
    }
    Setter(document, look).set();
}

} // namespace seamclock
