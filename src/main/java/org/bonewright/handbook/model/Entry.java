package org.bonewright.handbook.model;

/**
 * Something that a reader may look for.
 *
 * @param kind what it is: principle, measure, term
 * @param title what it is called
 * @param about one sentence on it
 * @param words further words by which it is found
 * @param target where it stands
 */
public record Entry(String kind, String title, String about, String words, Target target) {}
