package cyclepacket.hostile;

import cyclepacket.hostile.Node.Branch;
import cyclepacket.hostile.Node.Leaf;
import cyclepacket.hostile.Node.Row;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** One way to bend a file, each tallied by itself. */
enum Twist {
    DELETE {
        @Override
        void bend(Node root, Chance chance) {
            spot(root, chance).ifPresent(Spot::delete);
        }
    },
    DUPLICATE {
        @Override
        void bend(Node root, Chance chance) {
            spot(root, chance).ifPresent(Spot::duplicate);
        }
    },
    SWAP {
        @Override
        void bend(Node root, Chance chance) {
            Optional<Spot> one = spot(root, chance);
            Optional<Spot> other = spot(root, chance);
            if (one.isPresent() && other.isPresent()) {
                Node kept = one.get().value().copy();
                Node second = other.get().value().copy();
                one.get().put(second);
                other.get().put(kept);
            }
        }
    },
    RENAME {
        @Override
        void bend(Node root, Chance chance) {
            List<String> known = Spot.all(root).stream()
                    .map(Spot::key)
                    .filter(key -> !key.isEmpty())
                    .toList();
            spot(root, chance).ifPresent(spot -> {
                String key = spot.key() + (spot.key().isEmpty() ? chance.of(known) : "");
                spot.rename(Leaf.of(
                        switch (chance.below(4)) {
                            case 0 -> key + "s";
                            case 1 -> key.substring(1) + key.charAt(0);
                            case 2 -> chance.of(known);
                            default ->
                                text(chance, List.of(Scraps.WORDS, Scraps.MARKUP, Scraps.TEMPLATES, Scraps.CONTROLS));
                        }));
            });
        }
    },
    RETYPE {
        @Override
        void bend(Node root, Chance chance) {
            spot(root, chance).ifPresent(spot -> spot.put(Leaf.raw(chance.of(Scraps.RETYPES))));
        }
    },
    WRAP {
        @Override
        void bend(Node root, Chance chance) {
            spot(root, chance)
                    .ifPresent(spot -> spot.put(
                            chance.in100(50)
                                    ? new Row(Stream.of(spot.value()).collect(Collectors.toList()))
                                    : new Branch(Stream.of(new Node.Entry(Leaf.of("of"), spot.value()))
                                            .collect(Collectors.toList()))));
        }
    },
    SWAP_UNITS {
        @Override
        void bend(Node root, Chance chance) {
            leaf(root, chance, spot -> spot.text().matches(".*[0-9].*")).ifPresent(spot -> {
                String bare = spot.text().replaceAll("[^0-9.-]+$", "");
                spot.put(Leaf.raw(bare + " " + chance.of(Scraps.UNITS)));
            });
        }
    },
    HUGE_NUMBER {
        @Override
        void bend(Node root, Chance chance) {
            number(root, chance).ifPresent(spot -> spot.put(Leaf.raw(chance.of(Scraps.HUGE))));
        }
    },
    TINY_NUMBER {
        @Override
        void bend(Node root, Chance chance) {
            number(root, chance).ifPresent(spot -> spot.put(Leaf.raw(chance.of(Scraps.TINY))));
        }
    },
    OTHER_NUMBER {
        @Override
        void bend(Node root, Chance chance) {
            number(root, chance)
                    .ifPresent(spot -> spot.put(Leaf.raw(
                            switch (chance.below(4)) {
                                case 0 -> Integer.toString(chance.below(1_000));
                                case 1 -> chance.below(1_000) + "." + chance.below(1_000);
                                case 2 -> chance.below(80) * 12 + ".5";
                                default -> Integer.toString(1 + chance.below(4));
                            })));
        }
    },
    DATE {
        @Override
        void bend(Node root, Chance chance) {
            leaf(root, chance, spot -> spot.text().matches("[0-9]{4}-.*|[STR][0-9+-].*|[0-9]{2}:[0-9]{2}"))
                    .ifPresent(spot -> spot.put(Leaf.of(
                            chance.in100(50)
                                    ? chance.of(Scraps.DATES)
                                    : (1970 + chance.below(131)) + "-0" + (1 + chance.below(9)) + "-1"
                                            + chance.below(9))));
        }
    },
    UNICODE {
        @Override
        void bend(Node root, Chance chance) {
            into(root, chance, chance.scrap(Scraps.WORDS));
        }
    },
    CONTROL {
        @Override
        void bend(Node root, Chance chance) {
            into(root, chance, chance.scrap(Scraps.CONTROLS));
        }
    },
    TEMPLATE_MARKUP {
        @Override
        void bend(Node root, Chance chance) {
            into(root, chance, chance.scrap(Scraps.TEMPLATES));
        }
    },
    XML_MARKUP {
        @Override
        void bend(Node root, Chance chance) {
            into(root, chance, chance.scrap(Scraps.MARKUP));
        }
    },
    PATH {
        @Override
        void bend(Node root, Chance chance) {
            String trick = chance.of(Scraps.PATHS);
            leaf(root, chance, spot -> spot.key().matches("protocol|plan|medicine|syringe|clinic") || chance.in100(15))
                    .ifPresent(spot -> spot.put(Leaf.of(trick)));
        }
    },
    DEEP {
        @Override
        void bend(Node root, Chance chance) {
            int levels = chance.of(List.of(5, 40, 99, 101, 1_000, 20_000));
            String deep = chance.in100(50) ? Scraps.deep("[", "]", levels) : Scraps.deep("{a: ", "}", levels);
            spot(root, chance).ifPresent(spot -> spot.put(Leaf.raw(deep)));
        }
    },
    ALIAS {
        @Override
        void bend(Node root, Chance chance) {
            String bomb = chance.in100(70) ? Scraps.bomb(chance.below(12)) : "&loop [*loop, {a: *loop}]";
            spot(root, chance).ifPresent(spot -> spot.put(Leaf.raw(bomb)));
        }
    },
    TAG {
        @Override
        void bend(Node root, Chance chance) {
            spot(root, chance).ifPresent(spot -> spot.put(Leaf.raw(chance.of(Scraps.TAGS))));
        }
    },
    LONG {
        @Override
        void bend(Node root, Chance chance) {
            int times = chance.of(List.of(50, 400, 3_000)) / (1 + Spot.all(root).size() / MOST_SPOTS * 3_000);
            if (chance.in100(30)) {
                StringBuilder keys = new StringBuilder("{");
                for (int each = 0; each < times * 10; each++) {
                    keys.append('k').append(each).append(chance.in100(5) ? ": 1,\n      " : ": 1, ");
                }
                spot(root, chance)
                        .ifPresent(spot -> spot.put(Leaf.raw(keys.append('}').toString())));
                return;
            }
            Optional<Spot> list = spot(root, chance).filter(spot -> !spot.isLeaf());
            if (list.isPresent()) {
                int copies = Math.min(
                        times, MOST_SPOTS / (1 + Spot.all(list.get().value()).size()));
                for (int each = 0; each < copies; each++) {
                    list.get().duplicate();
                }
            } else {
                leaf(root, chance, spot -> true).ifPresent(spot -> spot.put(Leaf.of("long words ".repeat(times * 10))));
            }
        }
    },
    /** Damage to the bytes themselves; see {@link Bytes}. */
    BYTES {
        @Override
        void bend(Node root, Chance chance) {
            spot(root, chance).filter(spot -> chance.in100(20)).ifPresent(Spot::duplicate);
        }
    };

    /** More values than this do not fit into a file that is read at all. */
    private static final int MOST_SPOTS = 60_000;

    abstract void bend(Node root, Chance chance);

    private static Optional<Spot> spot(Node root, Chance chance) {
        List<Spot> all = Spot.all(root);
        return all.isEmpty() ? Optional.empty() : Optional.of(chance.of(all));
    }

    private static Optional<Spot> leaf(Node root, Chance chance, java.util.function.Predicate<Spot> wanted) {
        List<Spot> all =
                Spot.all(root).stream().filter(Spot::isLeaf).filter(wanted).toList();
        return all.isEmpty() ? Optional.empty() : Optional.of(chance.of(all));
    }

    private static Optional<Spot> number(Node root, Chance chance) {
        return leaf(root, chance, spot -> spot.text().matches("-?[0-9.]+"));
    }

    private static String text(Chance chance, List<List<String>> kinds) {
        return chance.scrap(chance.of(kinds));
    }

    /** Puts a scrap into a text: in its place, before, behind or in the middle. */
    static void into(Node root, Chance chance, String scrap) {
        leaf(root, chance, spot -> !spot.text().matches("[0-9.:-]*")).ifPresent(spot -> {
            String text = spot.text();
            int middle = text.offsetByCodePoints(0, text.codePointCount(0, text.length()) / 2);
            spot.put(Leaf.of(
                    switch (chance.below(4)) {
                        case 0 -> scrap;
                        case 1 -> scrap + " " + text;
                        case 2 -> text + " " + scrap;
                        default -> text.substring(0, middle) + scrap + text.substring(middle);
                    }));
        });
    }
}
