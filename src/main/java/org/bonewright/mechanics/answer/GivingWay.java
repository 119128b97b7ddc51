package org.bonewright.mechanics.answer;

/**
 * Something that gave way while a load was raised.
 *
 * @param load share of the load at which it did, from 0 to 1
 * @param at level of the screw in mm
 * @param what it did: tilt, slip or lifted
 */
public record GivingWay(double load, double at, String what) {}
