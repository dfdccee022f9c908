#include "core/people/credentials.h"

#include "core/base/posix.h"
#include "core/people/credentials_codec.h"

#include <algorithm>
#include <array>
#include <cerrno>
#include <cstdio>
#include <cstring>
#include <fcntl.h>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <sodium.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>
#include <vector>

namespace seamclock {

namespace {

using Bytes = std::vector<unsigned char>;

std::string hex(const Bytes& bytes) {
    std::string text(bytes.size() * 2 + 1, '\0');
    sodium_bin2hex(text.data(), text.size(), bytes.data(), bytes.size());
    text.pop_back();
    return text;
}

/// Of digits that the codec has looked at.
Bytes unhex(const std::string& text) {
    Bytes bytes(text.size() / 2);
    sodium_hex2bin(bytes.data(), bytes.size(), text.data(), text.size(), nullptr, nullptr, nullptr);
    return bytes;
}

Bytes randomBytes(std::size_t size) {
    Bytes bytes(size);
    randombytes_buf(bytes.data(), size);
    return bytes;
}

/// What Argon2id makes of a PIN (RFC 9106, by libsodium's crypto_pwhash).
Result<Secret> keyFrom(const Pin& pin, const PinBox& box) {
    Secret key(crypto_secretbox_KEYBYTES);
    const Bytes salt = unhex(box.salt);
    if (crypto_pwhash(
            key.bytes(), key.size(), pin.digits().view().data(), pin.digits().size(), salt.data(),
            static_cast<unsigned long long>(box.operations), static_cast<std::size_t>(box.memory),
            crypto_pwhash_ALG_ARGON2ID13) != 0) {
        return fail(
            ErrorCode::Missing, "checking a PIN needs " + std::to_string(box.memory / 1'000'000) +
                                    " MB of memory, and that is not free");
    }
    return key;
}

Result<PinBox> closeBox(const Pin& pin, const Secret& content) {
    PinBox box;
    box.salt = hex(randomBytes(crypto_pwhash_SALTBYTES));
    box.nonce = hex(randomBytes(crypto_secretbox_NONCEBYTES));
    box.operations = crypto_pwhash_OPSLIMIT_INTERACTIVE;
    box.memory = crypto_pwhash_MEMLIMIT_INTERACTIVE;
    const auto key = keyFrom(pin, box);
    if (!key) {
        return tl::unexpected<Error>(key.error());
    }
    Bytes closed(content.size() + crypto_secretbox_MACBYTES);
    const Bytes nonce = unhex(box.nonce);
    crypto_secretbox_easy(
        closed.data(), content.bytes(), content.size(), nonce.data(), key->bytes());
    box.box = hex(closed);
    return box;
}

/// Absent: not the PIN that closed it.
Result<std::optional<Secret>> openBox(const Pin& pin, const PinBox& box) {
    const auto key = keyFrom(pin, box);
    if (!key) {
        return tl::unexpected<Error>(key.error());
    }
    const Bytes closed = unhex(box.box);
    const Bytes nonce = unhex(box.nonce);
    Secret content(closed.size() - crypto_secretbox_MACBYTES);
    if (crypto_secretbox_open_easy(
            content.bytes(), closed.data(), closed.size(), nonce.data(), key->bytes()) != 0) {
        return std::optional<Secret>();
    }
    return std::optional<Secret>(std::move(content));
}

std::string waitText(Milliseconds wait) {
    const auto seconds = (wait.count() + 999) / 1000;
    return seconds < 120 ? std::to_string(seconds) + " s"
                         : std::to_string((seconds + 59) / 60) + " min";
}

Milliseconds pauseLeft(const WrongPins& wrong, const Instant& now) {
    const Milliseconds pause = pauseAfter(wrong.count);
    const Milliseconds gone = now.bootId == wrong.bootId ? now.boot - wrong.boot : now.boot;
    return std::max(Milliseconds(0), pause - gone);
}

} // namespace

Milliseconds pauseAfter(int wrong) {
    constexpr int kFree = 2;
    constexpr Milliseconds kFirst{30'000};
    constexpr Milliseconds kLongest{3'600'000};
    if (wrong <= kFree) {
        return Milliseconds(0);
    }
    Milliseconds pause = kFirst;
    for (int i = kFree + 1; i < wrong && pause < kLongest; ++i) {
        pause *= 2;
    }
    return std::min(pause, kLongest);
}

/// The file while it is read and changed: other programs wait meanwhile.
struct Credentials::File {
    int lock = -1;
    std::string path;
    CredentialsContent content;

    File() = default;
    File(File&& other) noexcept
        : lock(std::exchange(other.lock, -1)), path(std::move(other.path)),
          content(std::move(other.content)) {}
    File& operator=(File&&) = delete;
    ~File() {
        if (lock >= 0) {
            close(lock);
        }
    }

    static Result<File> open(const std::string& path) {
        File out;
        out.path = path;
        // Without a lock (a read-only folder) it can still be read.
        out.lock = ::open((path + ".lock").c_str(), O_RDWR | O_CREAT | O_CLOEXEC, 0600);
        if (out.lock >= 0) {
            flock(out.lock, LOCK_EX);
        }
        struct stat facts {};
        if (stat(path.c_str(), &facts) != 0) {
            if (errno == ENOENT) {
                return out;
            }
            return fail(ErrorCode::Unreadable, path + ": " + std::strerror(errno));
        }
        if (!S_ISREG(facts.st_mode)) {
            return fail(ErrorCode::Unreadable, path + ": is not a regular file");
        }
        constexpr mode_t kOthers = S_IRWXG | S_IRWXO;
        if ((facts.st_mode & kOthers) != 0) {
            return fail(
                ErrorCode::Unreadable,
                path + ": holds keys, and others than its owner may read or write it; take that "
                       "right away (chmod 600)");
        }
        std::ifstream stream(path, std::ios::binary);
        std::string text{std::istreambuf_iterator<char>(stream), std::istreambuf_iterator<char>()};
        if (stream.bad() || !stream.is_open()) {
            return fail(ErrorCode::Unreadable, path + ": can't be read");
        }
        auto content = readCredentials(path, text);
        wipe(text);
        if (!content) {
            return tl::unexpected<Error>(content.error());
        }
        out.content = std::move(*content);
        return out;
    }

    Result<void> write() const {
        const auto failed = [&](const char* what) {
            const int why = errno;
            std::remove((path + ".new").c_str());
            return fail(
                ErrorCode::NotWritten, path + ": " + what + " (" + std::strerror(why) + ")");
        };
        const std::string fresh = path + ".new";
        std::remove(fresh.c_str());
        const int file =
            ::open(fresh.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, S_IRUSR | S_IWUSR);
        if (file < 0) {
            return failed("can't be made");
        }
        std::string text = credentialsText(content);
        const bool whole =
            ::write(file, text.data(), text.size()) == static_cast<ssize_t>(text.size()) &&
            fsync(file) == 0;
        wipe(text);
        if (close(file) != 0 || !whole) {
            return failed("can't be written");
        }
        if (rename(fresh.c_str(), path.c_str()) != 0) {
            return failed("can't be put in its place");
        }
        const std::string folder = std::filesystem::path(path).parent_path().string();
        const int held =
            ::open(folder.empty() ? "." : folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
        if (held >= 0) {
            fsync(held);
            close(held);
        }
        return {};
    }
};

Result<Credentials::StationKey> Credentials::stationKey() {
    const std::lock_guard<std::mutex> lock(m_mutex);
    auto file = File::open(m_path);
    if (!file) {
        return tl::unexpected<Error>(file.error());
    }
    if (!file->content.stationSeed.empty()) {
        const Bytes raw = unhex(file->content.stationSeed);
        const Secret seed(std::string_view(reinterpret_cast<const char*>(raw.data()), raw.size()));
        auto key = SigningKey::fromSeed(seed);
        if (!key) {
            return tl::unexpected<Error>(key.error());
        }
        return StationKey{std::move(*key), false};
    }
    SigningKey key = SigningKey::make();
    const Secret seed = key.seed();
    file->content.stationSeed = hex(Bytes(seed.bytes(), seed.bytes() + seed.size()));
    if (const auto written = file->write(); !written) {
        return tl::unexpected<Error>(written.error());
    }
    return StationKey{std::move(key), true};
}

Result<bool> Credentials::hasPin(const std::string& person) const {
    const std::lock_guard<std::mutex> lock(m_mutex);
    const auto file = File::open(m_path);
    if (!file) {
        return tl::unexpected<Error>(file.error());
    }
    return file->content.people.count(person) > 0;
}

Result<WrongPins> Credentials::wrongPins(const File& file, const std::string& person) const {
    const auto box = file.content.people.find(person);
    if (box == file.content.people.end()) {
        return fail(ErrorCode::Missing, person + " has no PIN yet");
    }
    const auto more = m_unwritten.find(person);
    return more == m_unwritten.end() ? box->second.wrong : more->second;
}

Result<Milliseconds> Credentials::pause(const std::string& person, const Instant& now) const {
    const std::lock_guard<std::mutex> lock(m_mutex);
    const auto file = File::open(m_path);
    if (!file) {
        return tl::unexpected<Error>(file.error());
    }
    const auto wrong = wrongPins(*file, person);
    if (!wrong) {
        return tl::unexpected<Error>(wrong.error());
    }
    return pauseLeft(*wrong, now);
}

Result<Access> Credentials::enter(const Person& who, const Pin& pin, const Instant& now) {
    const std::lock_guard<std::mutex> lock(m_mutex);
    auto file = File::open(m_path);
    if (!file) {
        return tl::unexpected<Error>(file.error());
    }
    auto wrong = wrongPins(*file, who.id);
    if (!wrong) {
        return tl::unexpected<Error>(wrong.error());
    }
    if (const Milliseconds left = pauseLeft(*wrong, now); left > Milliseconds(0)) {
        return fail(
            ErrorCode::Refused, "after " + std::to_string(wrong->count) +
                                    " wrong PINs in a row: wait " + waitText(left));
    }
    PinBox& box = file->content.people[who.id];
    // Counted as wrong before it is tried, so that ending the program doesn't save the count.
    *wrong = WrongPins{wrong->count + 1, now.bootId, now.boot};
    box.wrong = *wrong;
    const bool counted = file->write().has_value();
    if (!counted) {
        m_unwritten[who.id] = *wrong;
    }
    auto opened = openBox(pin, box);
    if (!opened) {
        return tl::unexpected<Error>(opened.error());
    }
    if (!*opened) {
        const Milliseconds wait = pauseAfter(wrong->count);
        return fail(
            ErrorCode::Refused, wait > Milliseconds(0)
                                    ? "the PIN is wrong; the next try in " + waitText(wait)
                                    : "the PIN is wrong");
    }
    box.wrong = {};
    if (counted && file->write()) {
        m_unwritten.erase(who.id);
    } else {
        m_unwritten[who.id] = {};
    }
    Access out{ProvenPerson(who.id, who.role), std::nullopt};
    if ((*opened)->size() > 0 && who.role == Role::Foreman) {
        auto key = SigningKey::fromSeed(**opened);
        if (!key) {
            return tl::unexpected<Error>(key.error());
        }
        out.key = std::move(*key);
    }
    return out;
}

Result<std::optional<std::string>> Credentials::setPin(const Person& whose, const Pin& pin) {
    if (const auto longEnough = checkLength(pin, whose.role); !longEnough) {
        return tl::unexpected<Error>(longEnough.error());
    }
    const std::lock_guard<std::mutex> lock(m_mutex);
    auto file = File::open(m_path);
    if (!file) {
        return tl::unexpected<Error>(file.error());
    }
    std::optional<std::string> publicKey;
    Secret content(0);
    if (whose.role == Role::Foreman) {
        const SigningKey key = SigningKey::make();
        publicKey = key.publicKey();
        content = key.seed();
    }
    auto box = closeBox(pin, content);
    if (!box) {
        return tl::unexpected<Error>(box.error());
    }
    file->content.people[whose.id] = std::move(*box);
    if (const auto written = file->write(); !written) {
        return tl::unexpected<Error>(written.error());
    }
    m_unwritten.erase(whose.id);
    return publicKey;
}

Result<void>
Credentials::changePin(const Person& whose, const Pin& old, const Pin& pin, const Instant& now) {
    auto access = enter(whose, old, now);
    if (!access) {
        return tl::unexpected<Error>(access.error());
    }
    auto box = closeBox(pin, access->key ? access->key->seed() : Secret(0));
    if (!box) {
        return tl::unexpected<Error>(box.error());
    }
    const std::lock_guard<std::mutex> lock(m_mutex);
    auto file = File::open(m_path);
    if (!file) {
        return tl::unexpected<Error>(file.error());
    }
    file->content.people[whose.id] = std::move(*box);
    if (const auto written = file->write(); !written) {
        return tl::unexpected<Error>(written.error());
    }
    return {};
}

} // namespace seamclock
