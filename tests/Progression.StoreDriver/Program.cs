using System.Globalization;
using Progression.Records.Storage;

// A second process for the store's tests: append | hold | pause | fill, a folder, and what each needs.
return args switch
{
    ["append", string folder, string caseCode, string writer, string count] => Driver.Append(folder, caseCode, writer, int.Parse(count, CultureInfo.InvariantCulture)),
    ["hold", string folder] => Driver.Hold(folder),
    ["pause", string folder] => Driver.Pause(folder),
    ["fill", string folder] => Driver.Fill(folder),
    _ => 2,
};

internal static class Driver
{
    private static readonly Dictionary<string, string> NoFields = [];

    // Prints one line for each revision only after the store has said that it is saved.
    public static int Append(string folder, string caseCode, string writer, int count)
    {
        LiteDbPlanStore store = new(new StoreOptions(folder, (_, _) => NoFields) { LockDeadline = TimeSpan.FromMinutes(2) });
        for (int done = 0; done < count;)
        {
            RevisionRef? basis = store.Load(caseCode)?.Head(RecordKind.Plan)?.Stamp.Reference;
            AppendResult result = store.Append(Submission(caseCode, basis, writer, $$"""{"by":"{{writer}}","n":{{done}}}"""));
            if (result is AppendResult.Saved saved)
            {
                Console.WriteLine($"saved {saved.Stamps[0].Revision} {saved.Stamps[0].Hash}");
                done++;
            }
            else if (result is not AppendResult.Conflict)
            {
                Console.WriteLine(result);
                return 1;
            }
        }

        return 0;
    }

    // Fields are taken under the lock, so this keeps it until the process is killed.
    public static int Hold(string folder)
    {
        LiteDbPlanStore store = new(new StoreOptions(folder, (_, _) =>
        {
            Console.WriteLine("held");
            Thread.Sleep(Timeout.Infinite);
            return NoFields;
        }));
        return store.Append(Submission("HOLD-1", null, "holder", "{}")) is AppendResult.Saved ? 0 : 1;
    }

    // Keeps the lock until a line is typed, and lives until another is.
    public static int Pause(string folder)
    {
        LiteDbPlanStore store = new(new StoreOptions(folder, (_, _) =>
        {
            Console.WriteLine("held");
            Console.ReadLine();
            return NoFields;
        }));
        store.Append(Submission("HOLD-1", null, "holder", "{}"));
        Console.WriteLine("released");
        Console.ReadLine();
        return 0;
    }

    // Saves until the disk is full, then looks whether everything that was confirmed can still be read.
    public static int Fill(string folder)
    {
        LiteDbPlanStore store = new(new StoreOptions(folder, (_, _) => NoFields) { MinimumFreeBytes = 0 });
        RevisionRef? basis = null;
        AppendResult result;
        while (true)
        {
            result = store.Append(Submission("FULL-1", basis, "filler", $$"""{"text":"{{new string('x', 20_000)}}"}"""));
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

    private static Submission Submission(string caseCode, RevisionRef? basis, string writer, string body) =>
        new(caseCode, [new Draft(RecordKind.Plan, basis, body)], new Actor(writer, "Test " + writer), DateTimeOffset.UnixEpoch);
}
