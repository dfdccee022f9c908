// A disk that forgets on a power cut what was not brought to it. While a Recorder lives, every
// write, truncation, renaming, deletion and sync of this process under one folder is noted in its
// order, SQLite's and the program's own alike (the C library's functions are replaced in the test's
// program). A LosingDisk then replays the notes up to any moment and gives what a disk could hold
// if the power went there: of a file what was synced, and any part of what was written since, by
// sectors; of names what the folder's sync brought down, and in their order any number of those
// after it.
#pragma once

#include <cstdint>
#include <map>
#include <random>
#include <string>
#include <vector>

namespace seamclock::test {

struct DiskNote {
    enum class Kind { Made, Written, Cut, Synced, Renamed, Removed, FolderSynced, Said };
    Kind kind = Kind::Said;
    int file = 0;           // of ours; names come and go
    std::int64_t at = 0;    // Written: from where; Cut: the new size
    std::string bytes;      // Written; Said: what the program was seen to promise
    std::string name;       // without the folder
    std::string formerName; // Renamed
};

class Recorder {
public:
    /// One at a time.
    explicit Recorder(const std::string& folder);
    ~Recorder();
    Recorder(const Recorder&) = delete;
    Recorder& operator=(const Recorder&) = delete;

    /// Something that must hold from now on, whenever the power goes.
    static void say(const std::string& promise);
    /// Ends the recording.
    std::vector<DiskNote> finish();
    /// Empty: it works here. Else why not.
    static std::string whyNot();
};

/// What becomes of what was not synced.
enum class Loss {
    Everything, // none of it came down
    Nothing,
    LastTorn, // all came down but the last write, which tore at a sector
    OnlyLast, // the last write overtook all others
    Sectors   // each sector by chance
};

class LosingDisk {
public:
    void replay(const DiskNote& note);
    /// Names and contents.
    std::map<std::string, std::string> afterPowerCut(Loss loss, std::mt19937_64& random) const;

private:
    struct File {
        std::string durable;
        std::vector<DiskNote> since;
    };
    std::map<int, File> m_files;
    std::map<std::string, int> m_names; // durable
    std::vector<DiskNote> m_since;      // what befell names
};

/// Writes such a state into an empty folder.
void writeFiles(const std::map<std::string, std::string>& files, const std::string& folder);

} // namespace seamclock::test
