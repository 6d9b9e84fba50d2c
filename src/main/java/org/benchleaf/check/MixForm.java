package org.benchleaf.check;

import static org.benchleaf.check.References.Kind.MATERIAL;
import static org.benchleaf.check.References.Kind.SOLUTION;
import static org.benchleaf.check.References.Kind.SUBSTANCE;
import static org.benchleaf.quantity.Dimension.MASS_FRACTION;
import static org.benchleaf.quantity.Dimension.VOLUME_FRACTION;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.message.FormMessages;
import org.benchleaf.model.Material;
import org.benchleaf.model.Recipe;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.read.Node;

/** Reads a mixture of liquids: each part stands as a key with its share, beside 'rest' and 'from'. */
final class MixForm {

    private static final String REST = "rest";
    private static final String FROM = "from";
    /** Sums of decimal shares end in binary crumbs. */
    private static final double SLACK = 1e-9;

    private final Context context;
    private final Fields group;
    private final List<String> liquids;

    MixForm(Context context, Fields group) {
        this.context = context;
        this.group = group;
        this.liquids = group.keys().stream().filter(key -> !key.equals(REST) && !key.equals(FROM)).toList();
    }

    /** The mixture; empty where a part cannot be told, which is then said. */
    Optional<Recipe> read(String id) {
        Optional<Fields> stocks = group.has(FROM) && !group.isScalar(FROM) ? group.group(FROM) : Optional.empty();
        String rest = rest();
        if (context.retold() && liquids.stream().anyMatch(liquid -> group.isScalar(liquid) && group.missing(liquid).isPresent())) {
            List<String> things = new ArrayList<>();
            liquids.forEach(liquid -> stock(liquid, stocks).ifPresent(things::add));
            things.add(rest);
            return Optional.of(new Recipe.Untold(id, things, List.of()));
        }
        List<Recipe.Share> shares = new ArrayList<>();
        for (String liquid : liquids) {
            Quantity strength = group.needPositive(liquid, StrengthKinds.of(context, VOLUME_FRACTION, MASS_FRACTION));
            stock(liquid, stocks).ifPresent(from -> shares.add(new Recipe.Share(liquid, strength, from)));
        }
        tellStrangers(stocks);
        if (liquids.isEmpty() || shares.size() < liquids.size()) {
            tellNoParts();
            return Optional.empty();
        }
        tellKinds(shares);
        tellRepeats(shares, rest);
        return Optional.of(new Recipe.Mix(shares, rest));
    }

    private String rest() {
        if (group.missing(REST).isPresent()) {
            return context.retold() ? group.needText(REST) : group.need(Optional.empty(), REST, "");
        }
        group.scalar(REST).ifPresent(one -> context.references().use(one, SOLUTION, MATERIAL));
        return group.needText(REST);
    }

    private void tellNoParts() {
        group.soundness().spoil(group.place());
        if (liquids.isEmpty()) {
            group.messages().add(FormMessages.MIX_WITHOUT_PART.at(group.place()));
        }
    }

    /** The stock of a part: named under 'from', or the part itself where that is something that can be poured. */
    private Optional<String> stock(String liquid, Optional<Fields> stocks) {
        Optional<Node.Scalar> named = stocks.isPresent() ? stocks.get().scalar(liquid)
                : liquids.size() == 1 && group.isScalar(FROM) ? group.scalar(FROM) : Optional.empty();
        if (named.isPresent()) {
            context.references().use(named.get(), SOLUTION, MATERIAL);
            String from = named.get().text().strip();
            Optional<String> substance = Optional.ofNullable(context.library().materials().get(from))
                    .flatMap(Material::substance);
            context.references().know(SUBSTANCE, substance.map(List::of).orElse(List.of()));
            context.references().use(liquid, group.keyPlace(liquid), SUBSTANCE, SOLUTION, MATERIAL);
            return Optional.of(from);
        }
        if (liquids.size() > 1 && group.isScalar(FROM)) {
            tellStock(liquid, "'from' names one stock and there are " + liquids.size() + " parts");
            return Optional.empty();
        }
        if (isSubstance(liquid)) {
            tellStock(liquid, "it is a substance, and no bottle of it is named");
            return Optional.empty();
        }
        context.references().use(liquid, group.keyPlace(liquid), SOLUTION, MATERIAL);
        return Optional.of(liquid);
    }

    private boolean isSubstance(String liquid) {
        return !context.library().materials().containsKey(liquid)
                && context.library().reference().substances().containsKey(liquid);
    }

    private void tellStock(String liquid, String why) {
        group.messages().add(FormMessages.MIX_STOCK.at(group.keyPlace(liquid), "part", liquid, "why", why));
    }

    private void tellStrangers(Optional<Fields> stocks) {
        stocks.ifPresent(named -> named.keys().stream().filter(key -> !liquids.contains(key)).forEach(key ->
                group.messages().add(FormMessages.STOCK_OF_NO_PART.at(named.keyPlace(key), "found", key,
                        "parts", String.join(", ", liquids)))));
    }

    /** Shares are counted one way, and leave something for the rest. */
    private void tellKinds(List<Recipe.Share> shares) {
        if (shares.stream().map(share -> share.strength().dimension()).distinct().count() > 1) {
            group.messages().add(FormMessages.MIX_KINDS.at(group.place()));
            group.soundness().spoil(group.place());
            return;
        }
        double sum = shares.stream().mapToDouble(share -> share.strength().high() * share.strength().unit().factor())
                .sum();
        if (sum > 1 - SLACK) {
            group.messages().add(FormMessages.MORE_THAN_THE_WHOLE.at(group.place(),
                    "sum", Amounts.plain(Math.round(sum * 1e6) / 1e4)));
        }
    }

    private void tellRepeats(List<Recipe.Share> shares, String rest) {
        Set<String> poured = new HashSet<>();
        for (Recipe.Share share : shares) {
            if (share.liquid().equals(rest) || share.from().equals(rest)) {
                group.messages().add(FormMessages.REST_IS_PART.at(group.place(REST), "rest", rest));
            } else if (!poured.add(share.from())) {
                group.messages().add(FormMessages.PART_TWICE.at(group.keyPlace(share.liquid()), "part", share.from()));
            }
        }
    }
}
