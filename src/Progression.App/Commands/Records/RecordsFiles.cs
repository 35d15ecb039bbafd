using System.CommandLine;
using Progression.Core.Clinic;
using Progression.Records.Audit;
using Progression.Records.Storage;

namespace Progression.App.Commands.Records;

/// <summary>The commands that copy records to files and take them from files.</summary>
internal sealed class RecordsFiles(RecordsDesk desk)
{
    internal ExampledCommand Backup()
    {
        Argument<string> file = File("The file to make; there must be none of that name.");
        ExampledCommand command = desk.Command(
            ("backup", "Copies all records to a file, checks the copy whole and writes its SHA-256 beside it."),
            """
            Example:
              progression records backup /var/backups/progression/2026-11-25.journal

            People may go on working meanwhile. The file is for its owner alone (mode 0600) and is never written over another one; it holds everything, so keep
            it in a place that colleagues cannot write to. Damaged records are not copied: that would be no backup.
            """,
            ClinicAct.BackUpRecords,
            (line, at) =>
            {
                string path = Path.GetFullPath(line.GetRequiredValue(file));
                BackupReport report = at.Store.BackUp(path);
                at.Note(AuditAct.BackedUp, $"{RecordsCommand.Counted(report.Entries)}, head {report.HeadHash ?? "none"}");
                return new RecordsAnswer("backup", at.Folder, "The records are copied, and the copy was read back whole.")
                {
                    Entries = report.Entries,
                    Last = report.Last,
                    Bytes = report.Bytes,
                    Head = report.HeadHash,
                    File = path,
                    Sha256 = report.Sha256,
                    Gaps = report.Gaps,
                };
            });
        command.Arguments.Add(file);
        return command;
    }

    internal ExampledCommand Restore()
    {
        Argument<string> file = File("A backup.");
        Option<long?> drop = new("--drop-newer") { Description = "How many whole entries that are not in the file may be left out; exactly as many as the refusal says.", HelpName = "N" };
        ExampledCommand command = desk.Command(
            ("restore", "Puts the records back from a backup, and keeps what was saved since where it goes on from the backup's end."),
            """
            Examples:
              progression records restore /var/backups/progression/2026-11-25.journal
              progression records restore 2026-11-25.journal --drop-newer 2

            The file is checked whole first, with its SHA-256 when that lies beside it. The files as they were are moved together into a folder set-aside-DATE.
            When entries here would be lost, it refuses, says which, and wants their number named.
            """,
            ClinicAct.RestoreRecords,
            (line, at) => Restore(Existing(line.GetRequiredValue(file)), line.GetValue(drop), at));
        command.Arguments.Add(file);
        command.Options.Add(drop);
        return command;
    }

    internal ExampledCommand Export()
    {
        Argument<string> file = File("The file to make; there must be none of that name.");
        Option<long> after = new("--after") { Description = "Leave out entries up to and with this number. Default: 0, everything.", HelpName = "N" };
        ExampledCommand command = desk.Command(
            ("export", "Writes the journal's lines to a file, for another store to take in."),
            """
            Examples:
              progression records export all.lines
              progression records export since.lines --after 1200

            The file is for its owner alone (mode 0600) and is never written over another one. Damaged lines are left out and named.
            """,
            ClinicAct.ExportRecords,
            (line, at) => Export(Path.GetFullPath(line.GetRequiredValue(file)), line.GetValue(after), at));
        command.Arguments.Add(file);
        command.Options.Add(after);
        return command;
    }

    internal ExampledCommand Import()
    {
        Argument<string> file = File("Lines that \"records export\" wrote.");
        ExampledCommand command = desk.Command(
            ("import", "Takes in lines of another store that go on from this store's end; all of them or none."),
            """
            Example:
              progression records import since.lines
            """,
            ClinicAct.ImportRecords,
            (line, at) =>
            {
                string path = Existing(line.GetRequiredValue(file));
                using FileStream source = System.IO.File.OpenRead(path);
                ImportReport report = at.Store.Import(source);
                if (report.Problem is null && report.Added > 0)
                {
                    at.Note(AuditAct.TakenIn, RecordsCommand.Counted(report.Added));
                }

                return new RecordsAnswer("import", at.Folder, report.Problem ?? $"{RecordsCommand.Counted(report.Added)} taken in.").With(at.Store.Status()) with
                {
                    File = path,
                    AlreadyHere = report.AlreadyHere,
                    IsGood = report.Problem is null,
                };
            });
        command.Arguments.Add(file);
        return command;
    }

    private static RecordsAnswer Restore(string path, long? drop, RecordsAtHand at)
    {
        RestoreReport report = at.Store.Restore(path, drop, at.Clock.GetUtcNow());
        if (report.Problem is { } problem)
        {
            return new RecordsAnswer("restore", at.Folder, problem) { File = path, LeftOut = report.LeftOut, IsGood = false };
        }

        at.Note(AuditAct.Restored, FormattableString.Invariant($"{report.FromFile} entries from a file, {report.TakenOver} newer kept, {report.LeftOut} left out"));
        return new RecordsAnswer("restore", at.Folder, $"The records are back: {RecordsCommand.Counted(report.FromFile)} from the file.").With(at.Store.Status()) with
        {
            File = path,
            TakenOver = report.TakenOver,
            LeftOut = report.LeftOut,
            SetAside = report.SetAside,
        };
    }

    private static RecordsAnswer Export(string path, long after, RecordsAtHand at)
    {
        JournalReading reading;
        using (NewFile file = NewFile.Begin(path))
        {
            reading = at.Store.Export(file.Content, after, at.Progress);
            file.Finish();
        }

        at.Note(AuditAct.WrittenOut, $"{RecordsCommand.Counted(reading.Entries)}, head {reading.HeadHash ?? "none"}");
        return new RecordsAnswer("export", at.Folder, reading.Damage.IsEmpty ? $"{RecordsCommand.Counted(reading.Entries)} written." : "Damaged lines were left out.")
        {
            Entries = reading.Entries,
            Last = reading.Last,
            Head = reading.HeadHash,
            File = path,
            Damage = reading.Damage,
            Gaps = reading.Gaps,
            IsGood = reading.Damage.IsEmpty,
        };
    }

    private static string Existing(string path) => System.IO.File.Exists(path)
        ? Path.GetFullPath(path)
        : throw new FileNotFoundException($"There is no file {path}.");

    private static Argument<string> File(string description) => new("FILE") { Description = description };
}
