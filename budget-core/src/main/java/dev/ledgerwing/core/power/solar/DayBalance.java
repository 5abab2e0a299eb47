package dev.ledgerwing.core.power.solar;

import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.build.SolarDay;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Harvest against consumption through 24 hours.
 *
 * @param points the course of the day in steps of five minutes, both ends included
 * @param harvestWh what arrives from the cells at the packs, also while these are full, and {@code consumptionWh} what is drawn; null =
 *     not known
 * @param charge how the packs come through it; null while anything is missing
 * @param uncharged packs beside them that do not last as long
 * @param missing what would have to be known, in words: “the capacity of the packs”
 */
public record DayBalance(
        SolarDay day,
        DaySun sun,
        List<DayPoint> points,
        @Nullable Double harvestWh,
        @Nullable Double consumptionWh,
        @Nullable DayCharge charge,
        List<UnchargedPack> uncharged,
        List<String> missing) {

    static final int STEP_MINUTES = 5;

    private static final int DAY_HOURS = 24;

    public DayBalance {
        points = List.copyOf(points);
        uncharged = List.copyOf(uncharged);
        missing = List.copyOf(missing);
    }

    /**
     * The balance of a day.
     *
     * @param sources all that is aboard; those that are not cells are left aside
     * @param store the packs that the cells charge, all as one
     * @param consumptionW what is drawn from the packs in the phase flown all day; null = not known
     */
    public static DayBalance of(
            SolarDay day, List<PowerSource> sources, DayStore store, @Nullable Double consumptionW) {
        return of(new DayCourse(day, STEP_MINUTES), new DayInputs(sources, store, consumptionW));
    }

    static DayBalance of(DayCourse course, DayInputs inputs) {
        SolarDay day = course.day();
        List<SunPosition> positions = course.positions();
        DayHarvest harvest = inputs.harvest(day);
        List<Double> harvestW = harvest == null ? null : course.watts(harvest, positions);
        Double consumptionW = inputs.consumptionW();
        DayCharge charge = harvestW == null ? null : charge(course, inputs, harvestW);
        return new DayBalance(
                day,
                DaySun.of(day.date(), course.offset(), day.latitudeDeg(), day.longitudeDeg()),
                points(course, positions, new Curves(harvestW, consumptionW, charge)),
                harvestW == null ? null : (Double) course.energyWh(harvestW),
                consumptionW == null ? null : (Double) (consumptionW * DAY_HOURS),
                charge,
                List.of(),
                inputs.missing());
    }

    /** The same with packs beside it that the sun does not reach. */
    public DayBalance beside(List<UnchargedPack> packs) {
        List<String> alsoMissing = new ArrayList<>(missing);
        packs.stream()
                .filter(pack -> pack.lowHour() == null)
                .forEach(pack -> alsoMissing.add("how long “" + pack.name() + "” lasts"));
        return new DayBalance(day, sun, points, harvestWh, consumptionWh, charge, packs, alsoMissing);
    }

    /** Whether everything needed is known, and no pack ever holds less than it must keep. */
    public boolean isFlownThrough() {
        return charge != null && charge.isFlownThrough() && uncharged.isEmpty();
    }

    private static @Nullable DayCharge charge(DayCourse course, DayInputs inputs, List<Double> harvestW) {
        Double capacityWh = inputs.store().capacityWh();
        Double usablePercent = inputs.store().usablePercent();
        Double consumptionW = inputs.consumptionW();
        if (capacityWh == null || usablePercent == null || consumptionW == null) {
            return null;
        }
        List<Double> surplusW =
                harvestW.stream().map(each -> each - consumptionW).toList();
        return new ChargeCurve(course, surplusW).charge(capacityWh, 100 - usablePercent);
    }

    /** What is drawn of a day. */
    private record Curves(
            @Nullable List<Double> harvestW,
            @Nullable Double consumptionW,
            @Nullable DayCharge charge) {

        DayPoint point(int i, double hour, SunPosition sun) {
            return new DayPoint(
                    hour,
                    90 - sun.zenithDeg(),
                    harvestW == null ? null : harvestW.get(i),
                    consumptionW,
                    charge == null ? null : charge.percent().get(i));
        }
    }

    private static List<DayPoint> points(DayCourse course, List<SunPosition> positions, Curves curves) {
        return IntStream.range(0, course.size())
                .mapToObj(i -> curves.point(i, course.hour(i), positions.get(i)))
                .toList();
    }
}
