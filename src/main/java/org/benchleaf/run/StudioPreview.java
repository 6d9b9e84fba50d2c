package org.benchleaf.run;

import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.benchleaf.compose.part.Audience;
import org.benchleaf.message.Message;
import org.benchleaf.message.MessageText;
import org.benchleaf.preview.PreviewServer;
import org.benchleaf.preview.PreviewedSite;
import org.benchleaf.privacy.PrivateScan;
import org.benchleaf.privacy.Searchable;
import org.benchleaf.publish.SiteFile;
import org.benchleaf.publish.TemplateStop;
import org.benchleaf.read.CaseReader;

/** The pages of a warm studio as its author sees them: each the last good one, with what is to be told beside it. */
public final class StudioPreview implements PreviewedSite {

    private static final int MOST_PAGES = 64;
    /** Of how many changed cases all is told; of more, {@code check} tells. */
    private static final int MOST_TOLD = 3;
    private static final Comparator<Message> READING_ORDER = Comparator.comparing(Told::of, Told.READING_ORDER);

    private final Path content;
    private final WarmStudio studio;
    private final Clock clock;
    private final WarmPictures pictures = new WarmPictures();
    private final Map<String, Kept> kept = new LinkedHashMap<>(16, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Kept> eldest) {
            return size() > MOST_PAGES;
        }
    };
    /** What kept the files from being read at the last look; they are read again at the next. */
    private Optional<Message> fault = Optional.empty();
    private int looks;
    private int versions;

    /**
     * Prepares.
     *
     * @param content the folder that the studio was read from, for what is told when it cannot be read
     * @param clock for the time of day at which a page was made
     */
    public StudioPreview(Path content, WarmStudio studio, Clock clock) {
        this.content = content;
        this.studio = studio;
        this.clock = clock;
    }

    /**
     * A page as it was tried last.
     *
     * @param composed of what the file was made; empty if it never could be
     * @param shown the last good file
     * @param at when that was made
     * @param look at which look it was tried
     * @param isGood whether it could be made at that look
     * @param fault what went wrong besides what the files' own messages tell
     */
    private record Kept(Optional<WarmStudio.Composed> composed, Shown shown, LocalTime at, int look, boolean isGood,
            Optional<Message> fault) {

        static final Kept NEVER = new Kept(Optional.empty(), Shown.none(), LocalTime.MIN, -1, false, Optional.empty());

        Kept failed(int now, Optional<Message> why) {
            return new Kept(composed, shown, at, now, false, why);
        }

        boolean isSame(WarmStudio.Composed other) {
            return composed.filter(one -> one.page().equals(other.page()) && one.look().equals(other.look())).isPresent();
        }
    }

    /**
     * What a path leads to.
     *
     * @param caseId of the case to which the file belongs; empty for a file of the whole site
     * @param path in the site
     */
    private record Address(Audience audience, Optional<String> caseId, String path) {
    }

    @Override
    public synchronized boolean look() {
        boolean changed;
        Optional<Message> before = fault;
        try {
            changed = studio.look();
            fault = Optional.empty();
        } catch (UncheckedIOException broken) {
            changed = false;
            fault = Optional.of(Publishing.unreadable(content, broken).told());
        } catch (RuntimeException wrong) {
            changed = false;
            fault = Optional.of(Publishing.fault(content, wrong));
        }
        looks += changed ? 1 : 0;
        return changed || before.isPresent() != fault.isPresent();
    }

    @Override
    public synchronized List<String> sites() {
        return studio.audiences().stream().map(StudioPreview::name).toList();
    }

    @Override
    public synchronized List<String> cases() {
        return studio.caseIds().stream().filter(CaseReader::isCaseName).toList();
    }

    private static String name(Audience audience) {
        return audience.isPublic() ? "site" : "training-site";
    }

    private Optional<Address> address(String path) {
        return studio.audiences().stream().filter(audience -> path.startsWith(name(audience) + "/")).findFirst().map(audience -> {
            String inSite = path.substring(name(audience).length() + 1);
            String[] parts = inSite.split("/");
            return new Address(audience, caseOf(parts), inSite);
        });
    }

    /** Pages in another language lie in its folder. */
    private static Optional<String> caseOf(String[] parts) {
        return IntStream.range(0, 2).filter(at -> parts.length > at + 2 && parts[at].equals("cases")).mapToObj(at -> parts[at + 1])
                .findFirst();
    }

    @Override
    public synchronized Shown page(String path) {
        return address(path).map(address -> tried(path, address).shown()).orElseGet(Shown::none);
    }

    private Kept tried(String path, Address address) {
        Kept before = kept.getOrDefault(path, Kept.NEVER);
        if (before.look() == looks) {
            return before;
        }
        Kept now = made(address, before);
        kept.put(path, now);
        return now;
    }

    private Kept made(Address address, Kept before) {
        try {
            Optional<WarmStudio.Composed> composed = address.caseId()
                    .map(id -> studio.casePage(id, address.audience(), address.path()))
                    .orElseGet(() -> studio.sitePage(address.audience(), address.path()));
            return composed.map(one -> written(one, before)).orElseGet(() -> before.failed(looks, Optional.empty()));
        } catch (TemplateStop slip) {
            return before.failed(looks, Optional.of(slip.told()));
        } catch (UncheckedIOException broken) {
            return before.failed(looks, Optional.of(Publishing.unreadable(content, broken).told()));
        } catch (RuntimeException | StackOverflowError fault) {
            return before.failed(looks, Optional.of(Publishing.fault(content, fault)));
        }
    }

    /** The same page stays as it is, so that a browser which shows it need not load it again. */
    private Kept written(WarmStudio.Composed composed, Kept before) {
        if (before.isSame(composed)) {
            return new Kept(before.composed(), before.shown(), before.at(), looks, true, Optional.empty());
        }
        versions++;
        SiteFile file = composed.previewed(PreviewServer.script(versions));
        return new Kept(Optional.of(composed), new Shown(Optional.of(file), versions),
                LocalTime.now(clock).truncatedTo(ChronoUnit.SECONDS), looks, true, Optional.empty());
    }

    @Override
    public Optional<SiteFile> file(String path) {
        Optional<WarmPictures.Source> picture;
        synchronized (this) {
            Optional<Address> found = address(path);
            if (found.isEmpty()) {
                return Optional.empty();
            }
            Address address = found.get();
            picture = address.caseId().flatMap(id -> studio.picture(id, address.audience(), address.path()));
            if (picture.isEmpty()) {
                return studio.assets().stream().filter(file -> file.path().equals(address.path())).findFirst()
                        .or(() -> studio.data(address.caseId(), address.audience(), address.path()));
            }
        }
        // Beside the lock, since a picture takes longer than a page.
        return pictures.file(picture.get(), path.substring(path.indexOf('/') + 1));
    }

    @Override
    public synchronized Strip strip(String path) {
        Optional<Address> address = address(path);
        if (address.isEmpty()) {
            return new Strip(List.of("There is no such site"), List.of());
        }
        Kept page = tried(path, address.get());
        List<Message> messages = new ArrayList<>();
        try {
            List<Message> leaks = leaks(address.get(), page);
            messages.addAll(leaks);
            fault.ifPresent(messages::add);
            page.fault().ifPresent(messages::add);
            messages.addAll(studio.sharedMessages().all());
            List<String> notices = notices(address.get(), page, !leaks.isEmpty());
            Stream.concat(address.get().caseId().stream(), studio.lastChanged().stream().limit(MOST_TOLD)).distinct()
                    .forEach(id -> studio.caseNamed(id).ifPresent(one ->
                            messages.addAll(one.messages(studio.privateScan()).all())));
            return new Strip(notices, inOrder(messages));
        } catch (UncheckedIOException broken) {
            return new Strip(List.of(), List.of(Publishing.unreadable(content, broken).told()));
        } catch (RuntimeException | StackOverflowError fault) {
            return new Strip(List.of(), List.of(Publishing.fault(content, fault)));
        }
    }

    private static List<Message> inOrder(List<Message> messages) {
        Map<String, Message> once = new LinkedHashMap<>();
        messages.stream().sorted(Comparator.comparing(Message::severity).thenComparing(READING_ORDER))
                .forEach(message -> once.putIfAbsent(MessageText.of(message), message));
        return List.copyOf(once.values());
    }

    private List<String> notices(Address address, Kept page, boolean leaks) {
        List<String> notices = new ArrayList<>();
        if (address.caseId().flatMap(studio::caseNamed).filter(WarmCase::isDraft).isPresent()) {
            notices.add("This case is a draft: an edition leaves it out");
        }
        if (!page.isGood()) {
            notices.add(page.shown().file().isPresent() ? "This page is the last good one, from " + page.at()
                    + ": it cannot be made of the files as they stand now"
                    : "There is no such page, or it cannot be made of the files as they stand now");
        }
        if (leaks) {
            notices.add("This page holds a private value. It is shown to you alone; publishing stops at it");
        }
        if (studio.lastChanged().size() > MOST_TOLD) {
            notices.add(studio.lastChanged().size() + " cases changed at once; of " + MOST_TOLD
                    + " the messages stand here, of all of them 'check' tells");
        }
        return notices;
    }

    private List<Message> leaks(Address address, Kept page) {
        if (page.shown().file().isEmpty()) {
            return List.of();
        }
        PrivateScan all = studio.privateScan();
        PrivateScan scan = address.caseId().flatMap(studio::caseNamed).map(one -> one.scan(all)).orElse(all);
        return scan.scan(Searchable.of(page.shown().file().get()));
    }
}
