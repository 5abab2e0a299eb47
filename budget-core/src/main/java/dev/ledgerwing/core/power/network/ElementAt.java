package dev.ledgerwing.core.power.network;

/** Where an element sits: its place in a feed, counted from 0. */
public record ElementAt(String feed, int index) implements Comparable<ElementAt> {

    /** Its place as people and figures count it, from 1. */
    public int number() {
        return index + 1;
    }

    @Override
    public int compareTo(ElementAt other) {
        int byFeed = feed.compareTo(other.feed);
        return byFeed != 0 ? byFeed : Integer.compare(index, other.index);
    }
}
