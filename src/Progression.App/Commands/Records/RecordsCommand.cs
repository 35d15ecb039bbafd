using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using Progression.Core.Clinic;
using Progression.Records.Audit;
using Progression.Records.Caseload;
using Progression.Records.Storage;

namespace Progression.App.Commands.Records;

/// <summary><c>progression records</c>: looking after the records as a whole.</summary>
internal sealed class RecordsCommand(CommandOutput output, CliEnvironment environment, StorePlace stores)
{
    private readonly RecordsDesk _desk = new(output, environment, stores);

    internal Command Build()
    {
        RecordsFiles files = new(_desk);
        return new Command("records", "Looks after the records: whether they are whole, copies of them, and what to do when they are damaged.")
        {
            Status(), Verify(), Rebuild(), Repair(), files.Backup(), files.Restore(), files.Export(), files.Import(),
        };
    }

    private ExampledCommand Status() => _desk.Command(
        ("status", "Tells how much there is and whether damage is known."),
        """
        Example:
          progression records status

        It counts nothing and reads no record, so it is quick whatever the size; "verify" looks for damage.
        """,
        ClinicAct.CheckRecords,
        (_, at) =>
        {
            StoreStatus status = at.Store.Status();
            return new RecordsAnswer("status", at.Folder, status.Damage.IsEmpty ? "No damage is known." : DamageSaid).With(status);
        });

    private ExampledCommand Verify() => _desk.Command(
        ("verify", "Reads every entry and checks every hash, every chain, every review and the index."),
        """
        Examples:
          progression records verify
          progression records verify --json

        A whole chain says that no entry in it was changed. That its end was not cut off, or all of it written anew, only a head kept elsewhere can say: compare
        the head with the one in the system's log, on a signed plan or beside a backup.
        """,
        ClinicAct.CheckRecords,
        (_, at) =>
        {
            VerifyReport report = at.Store.Verify();
            ImmutableArray<string> reviews = ReviewCheck.Problems(at.Store, at.Progress);
            string said = !report.IsSound ? DamageSaid
                : reviews.IsEmpty ? "Every entry is whole and in its chain, and every review keeps to the rules."
                : "Every entry is whole and in its chain, but a review breaks the rules: another program wrote it.";
            return new RecordsAnswer("verify", at.Folder, said).With(at.Store.Status()) with
            {
                Cases = report.Cases,
                Entries = report.Entries,
                Head = report.TailHash,
                Damage = [.. report.Problems, .. reviews],
                Gaps = report.Gaps,
                IsGood = report.IsSound && reviews.IsEmpty,
            };
        });

    private ExampledCommand Rebuild() => _desk.Command(
        ("rebuild", "Makes the index again from the journal, as the program does by itself when they do not agree."),
        """
        Example:
          progression records rebuild

        No record is concerned. It is also the way to say that the journal has been put back and may be written again.
        """,
        ClinicAct.RebuildRecords,
        (_, at) =>
        {
            RebuildReport report = at.Store.Rebuild();
            if (report.Damage.IsEmpty)
            {
                at.Note(AuditAct.Rebuilt, Counted(report.Entries));
            }

            string torn = report.TornBytes > 0 ? FormattableString.Invariant($" {report.TornBytes} bytes of a save that was cut short, and so never confirmed, were moved aside.") : "";
            return new RecordsAnswer("rebuild", at.Folder, $"The index was made again from {Counted(report.Entries)}.{torn}").With(at.Store.Status());
        });

    private ExampledCommand Repair() => _desk.Command(
        ("repair", "Takes damaged lines out of the journal, so that saving works again, and writes down which gap they leave."),
        """
        Example:
          progression records repair

        Restore from a backup first, if there is one: only that brings back what the damaged lines held. Everything else stays as it is, also what was saved
        after the damage. The damaged lines are kept in plans.journal.damaged, all files as they were in a folder set-aside-DATE; remove them when nobody needs
        them. The gap stays named by "verify" for good.
        """,
        ClinicAct.RestoreRecords,
        (_, at) =>
        {
            RepairReport report = at.Store.Repair(at.By, at.Clock.GetUtcNow(), breaks => AuditNoteJson.WriteRepair(breaks));
            string said = report.Damage.IsEmpty ? "Nothing is damaged, and nothing was changed."
                : FormattableString.Invariant($"{report.LinesAside} damaged lines were moved aside; what they held is missing from here on. Saving works again.");
            return new RecordsAnswer("repair", at.Folder, said).With(at.Store.Status()) with { SetAside = report.SetAside, Gaps = report.Damage };
        });

    internal const string DamageSaid =
        "The records are damaged. What is whole can be read; nothing is saved until a backup is restored (records restore FILE) or the damage taken out (records repair).";

    internal static string Counted(long entries) => entries == 1 ? "1 entry" : string.Create(CultureInfo.InvariantCulture, $"{entries:N0} entries");
}
