"""A screen saver for python3-dbusmock: the two methods of org.freedesktop.ScreenSaver that hold it off. Each call
stands in the mock's log."""

BUS_NAME = "org.freedesktop.ScreenSaver"
MAIN_OBJ = "/org/freedesktop/ScreenSaver"
MAIN_IFACE = "org.freedesktop.ScreenSaver"
SYSTEM_BUS = False


def load(mock, parameters):
    mock.cookie = parameters.get("first", 1) - 1
    mock.AddMethods(MAIN_IFACE, [
        ("Inhibit", "ss", "u", "self.cookie += 1\nret = self.cookie"),
        ("UnInhibit", "u", "", ""),
    ])
