// This system has no implementation of core/machine yet. What to write, beside machine_linux.cpp:
// renameWithoutReplacing() (a rename that fails where the name is taken), liesOnNetwork() and
// isNetworkFileSystem() (whether locks of a file can be trusted), standBehindOthers() (a thread of
// low priority). Then app/platform: a clock that goes on while the machine sleeps.
#error "core/machine lacks this system: a rename that replaces nothing, network folders, threads"
