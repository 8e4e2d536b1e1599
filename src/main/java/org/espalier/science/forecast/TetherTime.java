package org.espalier.science.forecast;

/** A clock that runs with what a typical plate corrects, instead of with months. */
interface TetherTime {

    /** Degrees of a typical plate until so many months since it was placed; 0 before. */
    double at(double months);

    /** Months after which it stands still. */
    int months();
}
