// Keys instead of touches: a ring that goes from one target of a page to the next, in the order in
// which they are read, and presses the one that it stands on. It is seen only once a key has moved
// it.
#pragma once

#include "app/pages/page.h"
#include "app/parts/press_part.h"

#include <QPointer>
#include <vector>

namespace seamclock {

class KeyRing : public QWidget {
public:
    explicit KeyRing(QWidget* window);

    /// To the next or the one before on that page, round and round.
    void move(Page& page, int by);
    /// False: it stands nowhere.
    bool press();
    /// It stands nowhere.
    void leave();
    const PressPart* on() const { return m_on; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    static std::vector<PressPart*> targetsOf(const Page& page);

    QPointer<PressPart> m_on;
};

} // namespace seamclock
