import { describe, expect, it } from "vitest";
import {
  eventsOfCharger,
  eventsOfSite,
  eventsOfTest,
  publishedOn,
  undated,
  versionOf,
  versionsOf,
} from "../../../../lib/publish/outward/history.ts";
import { first, folderOf, publishedResults } from "./published.ts";

const results = publishedResults();
const lantern = first(results.chargers);
const lanternTest = first(results.tests);

describe("the history of a result", () => {
  it("has publication, revision and correction in the order of their days", () => {
    expect(eventsOfCharger(lantern, [lanternTest]).map(({ on, kind }) => [on, kind])).toEqual([
      ["2026-03-10", "published"],
      ["2026-04-02", "revision"],
      ["2026-04-02", "correction"],
    ]);
  });

  it("knows whether a correction changed the verdict, and does not pretend to for a revision", () => {
    expect(eventsOfCharger(lantern, [lanternTest]).map(({ changesVerdict }) => changesVerdict)).toEqual([null, null, false]);
  });

  it("keeps the id of every event when later ones are noted", () => {
    const before = eventsOfTest(lanternTest).map(({ id }) => id);
    const revised = { ...lanternTest, revisions: [...lanternTest.revisions, { on: "2026-05-01", what: "a", why: "b", noticedBy: null }] };
    expect(eventsOfTest(revised).map(({ id }) => id)).toEqual([...before, "tests/lantern-first/revision/2026-05-01"]);
  });

  it("tells two events of one day apart", () => {
    const revision = { on: "2026-05-01", what: "a", why: "b", noticedBy: null };
    const ids = eventsOfTest({ ...lanternTest, revisions: [revision, revision] }).map(({ id }) => id);
    expect(new Set(ids).size).toBe(3);
  });

  it("takes nothing but an ISO date for a day of publication", () => {
    const facts = (value: string | null) => ({ ...lanternTest, facts: [{ label: "Published on", value }] });
    expect(publishedOn(facts("2026-03-10"))).toBe("2026-03-10");
    expect(publishedOn(facts("in March"))).toBeNull();
    expect(publishedOn(facts(null))).toBeNull();
  });
});

describe("versions", () => {
  it("are the day of the last event", () => {
    expect(versionOf(eventsOfCharger(lantern, [lanternTest]))).toBe("2026-04-02");
  });

  it("are undated where no record states a day, and never the day of the build", () => {
    const silent = { ...lanternTest, facts: [], revisions: [] };
    expect(versionOf(eventsOfCharger({ ...lantern, corrections: [] }, [silent]))).toBe(undated);
  });

  it("are listed newest first, those of one day together", () => {
    const versions = versionsOf(eventsOfSite(folderOf(results)));
    expect(versions.map(({ version, events }) => [version, events.length])).toEqual([
      ["2026-04-02", 2],
      ["2026-03-10", 1],
    ]);
  });

  it("do not renumber when an older event is noted late", () => {
    const late = { ...lanternTest, revisions: [{ on: "2026-03-15", what: "a", why: "b", noticedBy: null }, ...lanternTest.revisions] };
    const versions = versionsOf(eventsOfCharger(lantern, [late])).map(({ version }) => version);
    expect(versions).toEqual(["2026-04-02", "2026-03-15", "2026-03-10"]);
  });
});
