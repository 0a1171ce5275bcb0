package cyclepacket.intake;

import cyclepacket.plan.Syringe;
import cyclepacket.quantity.Length;
import cyclepacket.quantity.Volume;

/** Builds the record of one syringe file. */
final class SyringeBuilder {
    private final Field top;

    SyringeBuilder(Sheet sheet) {
        this.top = sheet.top();
    }

    Part<Syringe> syringe() {
        Part<String> id = top.at("syringe").text();
        Part<String> name = top.at("name").text();
        Part<Volume> capacity = volume("capacity");
        Part<Volume> graduation = volume("graduation");
        Part<Syringe.Numbers> numbers = top.at("numbers").word(Syringe.Numbers.class);
        Part<Integer> numberedEvery = top.at("numbered-every").count();
        Part<Length> scale = top.at("scale").parsed("VALUE-FORM", Length::parse);
        Part<Length> barrel = top.at("barrel").parsed("VALUE-FORM", Length::parse);
        Part<Volume> loses = volume("loses");
        Part<String> source = top.at("source").text();
        return Part.whole(
                top.at("graduation"),
                () -> new Syringe(
                        id.get(),
                        name.get(),
                        capacity.get(),
                        graduation.get(),
                        numbers.get(),
                        numberedEvery.get(),
                        scale.get(),
                        barrel.get(),
                        loses.get(),
                        source.get()));
    }

    private Part<Volume> volume(String key) {
        return top.at(key).parsed("VALUE-FORM", Volume::parse);
    }
}
