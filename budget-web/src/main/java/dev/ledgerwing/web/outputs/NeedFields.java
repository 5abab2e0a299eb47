package dev.ledgerwing.web.outputs;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.PortNeeds;
import dev.ledgerwing.web.forms.Entries;
import dev.ledgerwing.web.forms.Shown;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/** The rows of what parts need of the flight controller, one row a part. */
final class NeedFields {

    static final String LIST = "need";

    private static final List<String> OF_A_ROW = List.of("part", "outputs", "serial", "i2c", "can", "analog");
    private static final Pattern ADDRESS = Pattern.compile("0[xX]0*[0-9a-fA-F]{1,3}");
    private static final int HIGHEST_ADDRESS = 0x3FF; // ten bits, the longer of the two forms
    private static final int MOST_ADDRESSES = 32;
    private static final String ADDRESS_EXPECTED =
            "Please write each address as the data sheet does, from 0x00 to 0x3FF, with commas between them: 0x28.";

    private NeedFields() {}

    static void show(PartLine line, int index, Shown fields) {
        String row = LIST + "." + index;
        PortNeeds needs = line.needs();
        fields.text(row + ".part", line.id())
                .tick(row + ".listed", true)
                .text(row + ".outputs", count(needs.outputs()))
                .text(row + ".serial", count(needs.serialPorts()))
                .text(row + ".i2c", String.join(", ", needs.i2cAddresses()))
                .text(row + ".can", count(needs.canNodes()))
                .text(row + ".analog", count(needs.analogInputs()));
    }

    private static String count(int ports) {
        return ports == 0 ? "" : Integer.toString(ports);
    }

    /** What each part of a row needs, by its id; fewer where something is wrong. */
    static Map<String, PortNeeds> needs(Entries entries, Build build) {
        Map<String, PortNeeds> needs = new LinkedHashMap<>();
        for (int i = 0; i < entries.typed().rows(LIST); i++) {
            String row = LIST + "." + i;
            if (!entries.typed().isBlank(row, OF_A_ROW)) {
                String part = part(row + ".part", entries, build);
                PortNeeds read =
                        needs(row, build.line(part).map(PartLine::needs).orElse(PortNeeds.NONE), entries);
                if (!part.isEmpty() && needs.put(part, read) != null) {
                    entries.trouble(row + ".part", "This part stands in two rows: please say all of it in one.");
                }
            }
        }
        return needs;
    }

    private static String part(String field, Entries entries, Build build) {
        String part = entries.code(field, OutputChoices.names(build.lines()).keySet());
        return entries.needed(field, part, "", "Please choose the part.");
    }

    private static PortNeeds needs(String row, PortNeeds before, Entries entries) {
        return new PortNeeds(
                ports(row + ".outputs", entries),
                ports(row + ".serial", entries),
                addresses(row + ".i2c", before.i2cAddresses(), entries),
                ports(row + ".can", entries),
                ports(row + ".analog", entries));
    }

    private static int ports(String field, Entries entries) {
        Integer count = entries.whole(field, 0, OutputBounds.MOST_PORTS);
        return count == null ? 0 : count;
    }

    /** Written alike, so that two that are the same are seen to be: 0xd and 0x0D. Those of the record stay as they are. */
    private static List<String> addresses(String field, List<String> before, Entries entries) {
        String text = entries.typed().text(field);
        if (text.isEmpty() || text.equals(String.join(", ", before))) {
            return text.isEmpty() ? List.of() : before;
        }
        List<String> addresses = new ArrayList<>();
        for (String each : text.split("[\\s,;]+", -1)) {
            if (each.isEmpty()) {
                continue;
            }
            int address =
                    ADDRESS.matcher(each).matches() ? Integer.parseInt(each.substring(2), 16) : HIGHEST_ADDRESS + 1;
            if (address > HIGHEST_ADDRESS) {
                entries.trouble(field, ADDRESS_EXPECTED);
                return List.of();
            }
            addresses.add("0x" + (address < 16 ? "0" : "")
                    + Integer.toHexString(address).toUpperCase(Locale.ROOT));
        }
        if (addresses.size() > MOST_ADDRESSES) {
            entries.trouble(field, "A part has at most " + MOST_ADDRESSES + " addresses.");
        }
        return addresses;
    }
}
