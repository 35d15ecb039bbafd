using System.Runtime.InteropServices;
using Progression.Records.Storage;

/// <summary>Saving, reading and holding.</summary>
internal static partial class Driver
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
        // A group of its own: the system drops Ctrl+Z for a group whose parent is not in the session, as where everything runs in the background.
        _ = MoveToGroup(0, 0);
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

    // Waits for a line, so that several begin at the same moment, and saves one revision on a given base.
    public static int Once(string folder, string caseCode, RevisionRef basis, string writer)
    {
        LiteDbPlanStore store = new(new StoreOptions(folder, (_, _) => NoFields) { LockDeadline = TimeSpan.FromMinutes(2) });
        Console.WriteLine("ready");
        Console.ReadLine();
        Console.WriteLine(store.Append(Submission(caseCode, basis, writer, $$"""{"by":"{{writer}}"}""")).GetType().Name);
        return 0;
    }

    // Reads as screens do, as fast as it can, until it is killed.
    public static int Read(string folder, string caseCode)
    {
        LiteDbPlanStore store = new(new StoreOptions(folder, (_, _) => NoFields) { LockDeadline = TimeSpan.FromMinutes(2) });
        for (long reads = 0; ; reads++)
        {
            _ = store.Load(caseCode);
            _ = store.List(row => row.CaseCode);
            if (reads == 0)
            {
                Console.WriteLine("reading");
            }
        }
    }

    public static Submission Submission(string caseCode, RevisionRef? basis, string writer, string body) =>
        new(caseCode, [new Draft(RecordKind.Plan, basis, body)], new Actor(writer, "Test " + writer), DateTimeOffset.UnixEpoch);

    [LibraryImport("libc", EntryPoint = "setpgid")]
    private static partial int MoveToGroup(int process, int group);
}
