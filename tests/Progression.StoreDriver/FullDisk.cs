using System.Globalization;
using Progression.Records.Storage;

/// <summary>On a small disk.</summary>
internal static class FullDisk
{
    // Saves until the disk is full, then looks whether everything that was confirmed can still be read.
    public static int Fill(string folder)
    {
        LiteDbPlanStore store = new(new StoreOptions(folder, (_, _) => Nothing) { MinimumFreeBytes = 0 });
        RevisionRef? basis = null;
        AppendResult result;
        while (true)
        {
            result = store.Append(Driver.Submission("FULL-1", basis, "filler", $$"""{"text":"{{new string('x', 20_000)}}"}"""));
            if (result is not AppendResult.Saved saved)
            {
                break;
            }

            basis = saved.Stamps[0].Reference;
        }

        Console.WriteLine(result.GetType().Name);
        Console.WriteLine(store.History("FULL-1", RecordKind.Plan).Count == basis?.Revision ? "all there" : "some missing");
        Console.WriteLine(store.Verify().IsSound ? "sound" : "not sound");
        return 0;
    }

    // From one free page to many: the disk fills up at another step of the first saves each time.
    public static int Squeeze(string mount, int kilobytes)
    {
        for (int free = 4; free <= kilobytes; free += 4)
        {
            string folder = Path.Combine(mount, free.ToString(CultureInfo.InvariantCulture));
            string ballast = Path.Combine(mount, "ballast");
            long room = new DriveInfo(mount).AvailableFreeSpace;
            File.WriteAllBytes(ballast, new byte[room - (free * 1024L)]);
            Console.WriteLine($"{free} {Squeezed(folder, ballast)}");
            Directory.Delete(folder, recursive: true);
        }

        return 0;
    }

    private static string Squeezed(string folder, string ballast)
    {
        LiteDbPlanStore store = new(new StoreOptions(folder, (_, _) => Nothing) { MinimumFreeBytes = 0 });
        RevisionRef? basis = null;
        AppendResult? result = null;
        int saved = 0;
        while (saved < 20 && (result = Save(store, basis)) is AppendResult.Saved landed)
        {
            (basis, saved) = (landed.Stamps[0].Reference, saved + 1);
        }

        File.Delete(ballast);
        bool isThere = store.History("FULL-1", RecordKind.Plan).Count == saved;
        bool worksAgain = Save(store, basis) is AppendResult.Saved && store.Verify().IsSound;
        return $"{result!.GetType().Name} {saved} {(isThere ? "all there" : "some missing")} {(worksAgain ? "works again" : "does not work")}";
    }

    private static AppendResult Save(LiteDbPlanStore store, RevisionRef? basis) => store.Append(Driver.Submission(
        "FULL-1", basis, "filler", $$"""{"n":{{basis?.Revision ?? 0}},"text":"{{new string('x', 3_000)}}"}"""));

    private static readonly Dictionary<string, string> Nothing = [];
}
