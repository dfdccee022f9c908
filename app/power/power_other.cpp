// This system has no implementation of StayAwake yet (stay_awake.h): on Linux it asks logind, the
// desktop's screen saver and UPower over D-Bus. What to write, under the same header: keep the
// machine and its screen awake while a weld runs, and say how the battery is.
#error "app/power lacks this system: keeping it and its screen awake, the battery"
