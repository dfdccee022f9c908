#include "app/shop/shop_reading.h"

namespace seamclock {

ShopReading::ShopReading(std::string log, QObject* parent)
    : QObject(parent), m_log(std::move(log)) {
    m_thread.setMaxThreadCount(1);
}

ShopReading::~ShopReading() {
    m_thread.clear();
    m_thread.waitForDone();
}

} // namespace seamclock
