// Says a line for each key press that the display brings it: that a held key really repeats is
// seen here, where nothing filters repeats.
#include <QApplication>
#include <QKeyEvent>
#include <QWidget>
#include <cstdio>

namespace {

class Witness : public QWidget {
protected:
    void keyPressEvent(QKeyEvent* event) override {
        std::printf("press %d\n", event->key());
        std::fflush(stdout);
    }
};

} // namespace

int main(int argc, char** argv) {
    QApplication application(argc, argv);
    Witness witness;
    witness.setWindowTitle("key witness");
    witness.resize(200, 100);
    witness.show();
    return QApplication::exec();
}
