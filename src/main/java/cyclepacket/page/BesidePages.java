package cyclepacket.page;

import cyclepacket.page.PageBlocks.Block;
import cyclepacket.wording.Pack;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Writes a packet's texts in two languages side by side, so that on-call staff can read what the patient reads. */
public final class BesidePages {
    private final Path templates;
    private final PageWriter writer;

    public BesidePages(Path templates, PageWriter writer) {
        this.templates = templates;
        this.writer = writer;
    }

    /**
     * @param own the packet's facts with the clinic's words in the patient's language
     * @param source the same facts with the clinic's words as they stand in its files
     * @throws TemplateFault if the two packets are not built alike
     */
    public String xhtml(PacketFacts own, PacketFacts source) {
        Pack pack = WordingFolder.of(templates, own.files().plan().language()).pack();
        Pack sourcePack =
                WordingFolder.of(templates, pack.source().orElseThrow()).pack();
        List<Block> left = blocks(own, pack.language());
        List<Block> right = blocks(source, sourcePack.language());
        if (left.size() != right.size()) {
            throw new TemplateFault("the packet in " + pack.name() + " has " + left.size() + " texts, and in "
                    + sourcePack.name() + " " + right.size());
        }
        PacketViews views = new PacketViews(source, writer.wording(sourcePack.language()));
        LayoutView layout = views.layout();
        BesideView view = new BesideView(
                views.issue(),
                views.person(),
                new LayoutView(sourcePack.language(), false, false, layout.paper(), "standard"),
                new BesideView.Tongues(pack.language(), pack.name()),
                new BesideView.Tongues(sourcePack.language(), sourcePack.name()),
                parts(left, right));
        return writer.write("beside.ftlh", sourcePack.language(), view);
    }

    /** The texts of the packet and, where the plan asks for them, of its evening cards. */
    private List<Block> blocks(PacketFacts facts, String language) {
        List<Block> blocks = new ArrayList<>(PageBlocks.of(writer.packet(facts, language, true)));
        writer.cards(facts, language, true).ifPresent(cards -> blocks.addAll(PageBlocks.of(cards)));
        return blocks;
    }

    private static List<BesideView.Part> parts(List<Block> left, List<Block> right) {
        List<BesideView.Part> parts = new ArrayList<>();
        BesideView.Row heading = new BesideView.Row("part", "", "");
        List<BesideView.Row> rows = new ArrayList<>();
        for (int at = 0; at < left.size(); at++) {
            BesideView.Row row = new BesideView.Row(
                    left.get(at).kind(), left.get(at).text(), right.get(at).text());
            if (row.kind().equals("part")) {
                add(parts, heading, rows);
                heading = row;
                rows = new ArrayList<>();
            } else if (!row.own().isEmpty() || !row.source().isEmpty()) {
                rows.add(row);
            }
        }
        add(parts, heading, rows);
        return parts;
    }

    private static void add(List<BesideView.Part> parts, BesideView.Row heading, List<BesideView.Row> rows) {
        if (!rows.isEmpty()) {
            parts.add(new BesideView.Part(heading, rows));
        }
    }
}
