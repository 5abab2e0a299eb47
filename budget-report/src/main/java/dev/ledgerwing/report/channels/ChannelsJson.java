package dev.ledgerwing.report.channels;

import dev.ledgerwing.core.build.Channel;
import dev.ledgerwing.core.build.Channel.Carried;
import dev.ledgerwing.core.build.NotNeeded.FunctionState;
import dev.ledgerwing.core.radio.Coupling;
import dev.ledgerwing.core.radio.FrameTiming;
import dev.ledgerwing.core.radio.LossRow;
import dev.ledgerwing.core.radio.RadioStatement;
import dev.ledgerwing.core.radio.explain.Relaxation;
import dev.ledgerwing.core.radio.plan.ChannelFault;
import dev.ledgerwing.core.verdict.Budget;
import dev.ledgerwing.report.text.JsonText;
import java.util.List;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * The channels for other programs. {@code outcome} is {@code FITS}, {@code DOES_NOT_FIT} or {@code NOT_KNOWN}; {@code plan} says what
 * {@code channels} are: {@code RECORDED}, {@code PROPOSED} or {@code NONE}; {@code proposed} is always what the planner would do.
 * Functions, controls and phases are named by their codes, positions counted from 1 along the pulse.
 */
public final class ChannelsJson {

    private final ChannelReport report;
    private final RadioStatement radio;
    private final ObjectNode json = JsonText.object();

    private ChannelsJson(ChannelReport report) {
        this.report = report;
        this.radio = report.radio();
    }

    public static String of(ChannelReport report) {
        ChannelsJson text = new ChannelsJson(report);
        text.answer();
        text.plan();
        text.explanation();
        return JsonText.of(text.json);
    }

    private void answer() {
        json.put("airframe", report.build().airframe().code());
        json.put("verdict", report.review().verdict(Budget.RADIO).name());
        json.put("outcome", radio.proposed().outcome().name());
        json.put("channelsNeeded", radio.channelsNeeded());
        json.put("channelsAvailable", radio.channelsAvailable());
        json.put("sharedPairs", radio.inForce().isEmpty() ? null : radio.sharedPairs());
        json.put("sharedWeight", radio.inForce().isEmpty() ? null : radio.sharedWeight());
        FrameTiming frame = radio.frame();
        json.set("frameUs", JsonText.number(frame == null ? null : frame.frameUs()));
        json.set("frameGapUs", JsonText.number(frame == null ? null : frame.gapUs()));
    }

    private void plan() {
        json.put("plan", radio.inForce().isEmpty() ? "NONE" : radio.isRecorded() ? "RECORDED" : "PROPOSED");
        channels(json.putArray("channels"), radio.inForce());
        channels(json.putArray("proposed"), radio.proposed().channels());
        ArrayNode faults = json.putArray("faults");
        radio.faults().forEach(fault -> fault(faults.addObject(), fault));
        ArrayNode couplings = json.putArray("couplings");
        radio.couplings().forEach(coupling -> coupling(couplings.addObject(), coupling));
        ArrayNode onLoss = json.putArray("onSignalLoss");
        radio.onLoss().forEach(row -> loss(onLoss.addObject(), row));
    }

    private static void channels(ArrayNode nodes, List<Channel> channels) {
        channels.forEach(channel -> {
            ObjectNode node = nodes.addObject();
            node.put("number", channel.number());
            node.put("control", channel.control());
            node.put("pinned", channel.pinned());
            ArrayNode carries = node.putArray("carries");
            channel.carries().forEach(carried -> carried(carries.addObject(), carried));
        });
    }

    private static void carried(ObjectNode node, Carried carried) {
        node.put("function", carried.function());
        texts(node.putArray("statesByPosition"), carried.states());
        node.put("presetState", carried.presetState());
    }

    private static void fault(ObjectNode node, ChannelFault fault) {
        node.put("kind", fault.kind().name());
        node.put("channel", fault.channel());
        node.put("phase", fault.phase());
        texts(node.putArray("functions"), fault.functions());
        states(node.putArray("states"), fault.states());
        node.put("position", fault.position());
    }

    private static void coupling(ObjectNode node, Coupling coupling) {
        node.put("channel", coupling.channel());
        texts(node.putArray("phases"), coupling.phases());
        states(node.putArray("wanted"), List.of(coupling.wanted()));
        states(node.putArray("comesWith"), coupling.with());
        node.put("sentence", coupling.sentence());
    }

    private static void loss(ObjectNode node, LossRow row) {
        node.put("function", row.function().code());
        node.put("wanted", row.wanted());
        node.put("happens", row.happens().name());
        node.put("goesTo", row.goesTo());
        node.put("verdict", row.verdict().name());
        node.put("sentence", row.sentence());
    }

    private void explanation() {
        texts(json.putArray("missing"), radio.proposed().missing());
        ArrayNode reasons = json.putArray("reasons");
        report.reasons().forEach(reason -> {
            ObjectNode node = reasons.addObject();
            node.put("kind", reason.kind().name());
            node.put("sentence", reason.sentence());
        });
        ArrayNode relaxations = json.putArray("relaxations");
        report.relaxations().all().forEach(relaxation -> relaxation(relaxations.addObject(), relaxation));
    }

    private static void relaxation(ObjectNode node, Relaxation relaxation) {
        node.put("kind", relaxation.kind().name());
        node.put("key", relaxation.key());
        node.put("what", relaxation.what());
        node.put("loses", relaxation.loses());
        node.put("caution", relaxation.caution());
    }

    private static void states(ArrayNode nodes, List<FunctionState> states) {
        states.forEach(state -> {
            ObjectNode node = nodes.addObject();
            node.put("function", state.function());
            node.put("state", state.state());
        });
    }

    private static void texts(ArrayNode nodes, List<String> texts) {
        texts.forEach(nodes::add);
    }
}
