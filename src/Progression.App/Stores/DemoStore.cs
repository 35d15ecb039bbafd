using Progression.Core.Drafting;
using Progression.Core.Entry;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Records.Caseload;
using Progression.SeedDemo;

namespace Progression.App.Stores;

/// <summary>What came of asking for the demo.</summary>
/// <param name="Ready">Whether the store now holds a demo.</param>
/// <param name="Told">What to tell, as a sentence; empty for nothing.</param>
public sealed record DemoAnswer(bool Ready, string Told);

/// <summary>Fills a store with the invented caseload and a drafted plan for each case.</summary>
public static class DemoStore
{
    private const UnixFileMode ForItsOwner = UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute;

    /// <summary>The case whose plan is shown first.</summary>
    public static CaseCode Showcase { get; } = CaseCode.Parse(DemoCaseload.Showcase)!;

    /// <summary>
    /// Makes the demo of the present day, or keeps the one that is there: today's, and an older one in which something was saved or is kept as a draft.
    /// </summary>
    /// <param name="store">The demo's store; its folder is empty, missing or a demo's, else nothing is touched.</param>
    /// <param name="fresh">Start over whatever was changed.</param>
    /// <exception cref="IOException">The folder cannot be written.</exception>
    public static DemoAnswer Prepare(OpenStore store, bool fresh)
    {
        ArgumentNullException.ThrowIfNull(store);
        DemoMarker? marker = DemoMarker.Of(store.Folder);
        if (marker is null && (File.Exists(store.Folder) || (Directory.Exists(store.Folder) && Directory.EnumerateFileSystemEntries(store.Folder).Any())))
        {
            return new DemoAnswer(false, $"{store.Folder} is not a demo's folder, so nothing in it was touched. Name an empty or new folder.");
        }

        if (fresh || marker?.Entries is not { } entries)
        {
            return Make(store);
        }

        bool today = marker.Day == store.Today;
        return today ? new DemoAnswer(true, "")
            : store.Book.Generation() == entries && !store.Drafts.Any ? Make(store)
            : new DemoAnswer(true, $"This demo was made on {marker.Day:yyyy-MM-dd} and changed since, so it is kept. \"progression demo --fresh\" makes today's.");
    }

    private static DemoAnswer Make(OpenStore store)
    {
        Clear(store.Folder);
        DemoMarker making = new(store.Today, null);
        making.Write(store.Folder);
        foreach (Case invented in DemoCaseload.Make(store.Today, store.Library))
        {
            // The showcase has a history: drafted after the first visit, then again over that plan, with a change by hand.
            bool showcase = invented.Code == Showcase;
            Case atFirst = showcase ? DemoCaseload.AtFirstVisit(invented) : invented;
            Entered<PlanRevision> first = PlanDraft.Draft(atFirst, store.Library);
            Entered<PlanRevision> now = showcase && first.Value is { } before ? Redraft.Of(before, invented, store.Library) : first;
            if (first.Value is null || now.Value is null)
            {
                return new DemoAnswer(false, $"{invented.Code} cannot be drafted with this library. {first.Problems.Concat(now.Problems).First()}");
            }

            SaveResult result = store.Book.Save(atFirst, first.Value, null);
            if (showcase && result is SaveResult.Saved)
            {
                result = store.Book.Save(invented, DemoCaseload.WithOwnChange(now.Value), store.Book.Again(invented.Code));
            }

            if (result is SaveResult.NotSaved refused)
            {
                return new DemoAnswer(false, $"The demo could not be saved. {refused.Why}");
            }
        }

        (making with { Entries = store.Book.Generation() }).Write(store.Folder);
        return new DemoAnswer(true, "");
    }

    /// <summary>Makes the folder, or takes the records and drafts out of it. The locks stay: another process may hold them.</summary>
    private static void Clear(string folder)
    {
        if (OperatingSystem.IsWindows())
        {
            Directory.CreateDirectory(folder);
        }
        else
        {
            Directory.CreateDirectory(folder, ForItsOwner);
        }

        string drafts = Path.Combine(folder, DraftShelf.FolderName);
        IEnumerable<string> kept = Directory.Exists(drafts) ? Directory.EnumerateFiles(drafts) : [];
        IEnumerable<string> records = Directory.EnumerateFiles(folder, "plans.*").Where(file => Path.GetExtension(file) is not (".lock" or ".gate"));
        foreach (string file in records.Concat(kept).ToList())
        {
            File.Delete(file);
        }
    }
}
