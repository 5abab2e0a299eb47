package dev.ledgerwing.web.forms;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.web.airframe.AirframePage;
import dev.ledgerwing.web.desk.Deed;
import java.util.Map;
import java.util.Optional;

/** A form on one part of the record. */
public interface RecordForm {

    /** The template that shows it. */
    String view();

    /** The page of the airframe it belongs to, and that a change leads back to. */
    AirframePage page();

    /** Fills in the fields as they show a record; leaves them empty where the record has nothing to show. */
    void show(Build build, Shown fields);

    /** What the page needs beside the fields: the lists to choose from, and what follows from what was typed. */
    Map<String, Object> surroundings(Build build, Entries entries);

    /**
     * What is to be done; nothing once a field is wrong, or where the member only wants to look.
     *
     * @param seen the record the form was made from
     */
    Optional<Deed> deed(Entries entries, Build seen);

    /**
     * Whether what it is about is still there to be shown. Where it is not, fields that nobody touched keep what they showed
     * before, so that it can be added anew as it was.
     */
    default boolean isShownBy(Build build) {
        return true;
    }
}
