package dev.ledgerwing.core.build;

/** One thing that is wrong with a record: the place, {@code lines[12].unitMassG}, and a sentence. */
public record Problem(String place, String sentence) {

    @Override
    public String toString() {
        return place.isEmpty() ? sentence : place + ": " + sentence;
    }
}
