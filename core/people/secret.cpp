#include "core/people/secret.h"

#include <cstdlib>
#include <cstring>
#include <new>
#include <sodium.h>
#include <utility>

namespace seamclock {

Secret::Secret(std::size_t size) : m_size(size) {
    if (sodium_init() < 0) {
        std::abort(); // no random source: nothing here could be kept secret
    }
    m_bytes = static_cast<unsigned char*>(sodium_malloc(size));
    if (m_bytes == nullptr) {
        throw std::bad_alloc();
    }
    sodium_memzero(m_bytes, size);
}

Secret::Secret(std::string_view bytes) : Secret(bytes.size()) {
    std::memcpy(m_bytes, bytes.data(), bytes.size());
}

Secret::Secret(Secret&& other) noexcept
    : m_bytes(std::exchange(other.m_bytes, nullptr)), m_size(std::exchange(other.m_size, 0)) {}

Secret& Secret::operator=(Secret&& other) noexcept {
    std::swap(m_bytes, other.m_bytes);
    std::swap(m_size, other.m_size);
    return *this;
}

Secret::~Secret() {
    sodium_free(m_bytes); // overwrites first
}

std::string_view Secret::view() const {
    return {reinterpret_cast<const char*>(m_bytes), m_size};
}

void wipe(std::string& text) {
    sodium_memzero(text.data(), text.size());
    text.clear();
}

} // namespace seamclock
