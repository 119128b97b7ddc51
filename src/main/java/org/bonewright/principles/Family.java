package org.bonewright.principles;

/**
 * A family of principles, one folder of {@code rules/}.
 *
 * @param id the folder's name
 * @param letter its letter in the knowledge base
 * @param title what it is about
 * @param order its place among the families, as principles are evaluated and shown
 */
public record Family(String id, String letter, String title, int order) {}
