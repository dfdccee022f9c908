// Bytes that must not get about: kept in memory that is locked, fenced, left out of core dumps and
// overwritten when it is given back. A Secret can be moved but not copied or printed, so that a PIN
// or a key has one place, and no log, message or backtrace shows it.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace seamclock {

class Secret {
public:
    /// That many zeros.
    explicit Secret(std::size_t size);
    /// A copy; the original stays the caller's to wipe.
    explicit Secret(std::string_view bytes);
    Secret(Secret&& other) noexcept;
    Secret& operator=(Secret&& other) noexcept;
    Secret(const Secret&) = delete;
    Secret& operator=(const Secret&) = delete;
    ~Secret();

    unsigned char* bytes() { return m_bytes; }
    const unsigned char* bytes() const { return m_bytes; }
    std::size_t size() const { return m_size; }
    std::string_view view() const;

private:
    unsigned char* m_bytes = nullptr;
    std::size_t m_size = 0;
};

/// Overwrites a text that held something secret, before it is let go.
void wipe(std::string& text);

} // namespace seamclock
