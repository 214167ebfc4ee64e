package runtrue.wind.eurocode;

/** How a plane lies to the wind. */
enum SlopeRole {
    FLAT,
    WINDWARD,
    LEEWARD,
    SIDE
}
