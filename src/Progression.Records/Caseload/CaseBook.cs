using System.Collections.Immutable;
using Progression.Core.Clinic;
using Progression.Core.Forecasts;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Core.Reviews;
using Progression.Records.Audit;
using Progression.Records.Cases;
using Progression.Records.Forecasts;
using Progression.Records.Plans;
using Progression.Records.Reviews;
using Progression.Records.Storage;

namespace Progression.Records.Caseload;

/// <summary>
/// The cases and plans of a store, as the screens and commands use them. Reading calls throw <see cref="StoreException"/> when the store is busy,
/// damaged or not permitted. What the person may not do is refused and written down.
/// </summary>
/// <param name="store">Where the records are.</param>
/// <param name="person">Who works, with what they are in the clinic.</param>
/// <param name="clock">The clock that dates what is saved.</param>
public sealed class CaseBook(IPlanStore store, ClinicPerson person, TimeProvider clock)
{
    private const int MostFormer = 100;

    private readonly AuditTrail _trail = new(store, person, clock);

    /// <summary>A case with its plan and kept forecasts, opened by the person, which is written down; null when there is no such case.</summary>
    /// <exception cref="FormatException">What is stored under the code is not of this program's form.</exception>
    public OpenedCase? Open(CaseCode code)
    {
        OpenedCase? opened = Again(code);
        // A full disk must not hide a case: what cannot be written down is told, and the case is shown.
        return opened is null ? null : opened with
        {
            Unnoted = _trail.Note(new AuditNote(AuditAct.Viewed, code.Text, opened.PlanStamp is null ? RecordKind.Case : RecordKind.Plan, (opened.PlanStamp ?? opened.CaseStamp).Reference)),
        };
    }

    /// <summary>The same for a case that the person has opened already, as after a save; nothing is written down.</summary>
    /// <exception cref="FormatException">What is stored under the code is not of this program's form.</exception>
    public OpenedCase? Again(CaseCode code)
    {
        Require(ClinicAct.ViewCase, code.Text);
        return Read(code);
    }

    /// <summary>
    /// Takes something of every case as it stands, for figures in which no case can be told. It is written down once, not for each case.
    /// </summary>
    /// <typeparam name="T">What is taken.</typeparam>
    /// <param name="of">Takes it.</param>
    /// <param name="progress">Hears how far it is, and may throw to break it off.</param>
    /// <returns>What was taken; how many cases could not be read because what is stored is not of this program's form; and what could not be written down.</returns>
    public (ImmutableArray<T> Taken, int Unreadable, string? Unnoted) Figures<T>(Func<OpenedCase, T> of, IProgress<WorkDone> progress)
    {
        ArgumentNullException.ThrowIfNull(of);
        ArgumentNullException.ThrowIfNull(progress);
        Require(ClinicAct.SeeFigures, null);
        ImmutableArray<CaseCode> codes = [.. store.List(row => row.Heads.Any(head => head.Kind == RecordKind.Case) ? CaseCode.Parse(row.CaseCode) : null).Cases.OfType<CaseCode>()];
        ImmutableArray<T>.Builder taken = ImmutableArray.CreateBuilder<T>(codes.Length);
        for (int at = 0; at < codes.Length; at++)
        {
            progress.Report(new WorkDone("reading the cases", at, codes.Length));
            try
            {
                if (Read(codes[at]) is { } opened)
                {
                    taken.Add(of(opened));
                }
            }
            catch (FormatException)
            {
                // Opening that case tells what is wrong with it.
            }
        }

        string? unnoted = _trail.Note(new AuditNote(AuditAct.Viewed, null, What: FormattableString.Invariant($"the clinic's figures, {taken.Count} cases")));
        return (taken.ToImmutable(), codes.Length - taken.Count, unnoted);
    }

    private OpenedCase? Read(CaseCode code)
    {
        CaseView? view = store.Load(code.Text);
        if (view?.Head(RecordKind.Case) is not { } patient)
        {
            return null;
        }

        StoredRevision? plan = view.Head(RecordKind.Plan);
        StoredRevision? forecasts = view.Head(RecordKind.Forecasts);
        return new OpenedCase(
            CaseJson.Read(patient.Body), patient.Stamp, plan is null ? null : PlanJson.Read(plan.Body), plan?.Stamp, view.Damage)
        {
            Forecasts = forecasts is null ? [] : ForecastJson.Read(forecasts.Body),
            ForecastsStamp = forecasts?.Stamp,
            Review = view.Head(RecordKind.Review) is { } review ? ReviewJson.Read(review.Body) : ReviewRecord.Empty,
        };
    }

    /// <summary>A plan as it was in an earlier revision; null when there is no such revision.</summary>
    /// <param name="code">The case.</param>
    /// <param name="revision">Which one; the hash counts too.</param>
    /// <exception cref="FormatException">What is stored is not of this program's form.</exception>
    public PlanRevision? Plan(CaseCode code, RevisionRef revision)
    {
        ArgumentNullException.ThrowIfNull(revision);
        Require(ClinicAct.ViewCase, code.Text);
        return store.Read(code.Text, RecordKind.Plan, revision.Revision) is { } stored && stored.Stamp.Reference == revision ? PlanJson.Read(stored.Body) : null;
    }

    /// <summary>The plan as it was in the revisions before one, oldest first; at most the latest hundred. One that cannot be read is left out.</summary>
    /// <param name="code">The case.</param>
    /// <param name="before">The number of the revision before which they are.</param>
    public ImmutableArray<PlanRevision> Former(CaseCode code, int before)
    {
        ArgumentNullException.ThrowIfNull(code);
        Require(ClinicAct.ViewCase, code.Text);
        int first = Math.Max(1, before - MostFormer);
        return [.. Enumerable.Range(first, Math.Max(0, before - first)).Select(number => store.Read(code.Text, RecordKind.Plan, number)).OfType<StoredRevision>().Select(stored => PlanJson.Read(stored.Body))];
    }

    /// <summary>One page of the caseload.</summary>
    public CasePage List(CaseQuery query)
    {
        Require(ClinicAct.ViewCase, null);
        return store.List(query);
    }

    /// <summary>Takes something of every case, with what lists know of it; the fastest way through a whole caseload.</summary>
    /// <typeparam name="T">What is taken.</typeparam>
    /// <param name="of">Takes it from a row; it must not use the store.</param>
    public CaseList<T> List<T>(Func<CaseRow, T> of)
    {
        Require(ClinicAct.ViewCase, null);
        return store.List(of);
    }

    /// <summary>The reviews of its plans.</summary>
    public ReviewBook Reviews { get; } = new(store, person, new AuditTrail(store, person, clock), clock);

    /// <summary>Who works.</summary>
    public ClinicPerson Person => person;

    /// <summary>The account that works, as revisions name it.</summary>
    public Actor By { get; } = new(person.UserId, person.Name);

    /// <summary>The same of the cases that wait for a review, without going through the others.</summary>
    /// <typeparam name="T">What is taken.</typeparam>
    /// <param name="of">Takes it from a row; it must not use the store.</param>
    public CaseList<T> Waiting<T>(Func<CaseRow, T> of) => store.Waiting(of);

    /// <summary>Number of the last save, 0 for an empty store; every save raises it.</summary>
    public long Generation() => store.Generation();

    /// <summary>Whether somebody saved since <see cref="Generation"/> was this; cheap enough to be asked every second.</summary>
    public bool HasChangedSince(long generation) => store.HasChangedSince(generation);

    /// <summary>Writes down what the person does with the records.</summary>
    public AuditTrail Trail => _trail;

    /// <summary>Hash of the last entry of the records, which stands for everything before it; null for an empty store.</summary>
    public string? ChainHead() => store.Status().HeadHash;

    /// <summary>Saves a case and its plan together, over what is there now when it is still what they were made from.</summary>
    /// <param name="patient">The case.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="from">What they were made from; null for a case that is new.</param>
    public SaveResult Save(Case patient, PlanRevision plan, OpenedCase? from) => Save(patient.Code, OfCase(patient, from), OfPlan(plan, from?.PlanStamp?.Reference));

    /// <summary>Saves a case alone, for instance with a session logged; its plan stays as it is.</summary>
    /// <param name="patient">The case.</param>
    /// <param name="from">What it was made from; null for a case that is new.</param>
    public SaveResult Save(Case patient, OpenedCase? from) => Save(patient.Code, OfCase(patient, from));

    /// <summary>Saves a plan alone, over the revision it was made from.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="basedOn">The revision it was made from; null when none was saved.</param>
    public SaveResult Save(PlanRevision plan, RevisionRef? basedOn) => Save(plan.Code, OfPlan(plan, basedOn));

    /// <summary>
    /// Saves what a reassessment came to: the case with the new assessment, the plan with what was decided on the proposal, and the kept forecasts. All of it
    /// is saved, or nothing.
    /// </summary>
    /// <param name="patient">The case.</param>
    /// <param name="plan">The plan; where nothing of the proposal was taken, the standing one with that decision.</param>
    /// <param name="forecasts">All kept forecasts, those that were just made included.</param>
    /// <param name="from">What they were made from.</param>
    public SaveResult SaveReassessment(Case patient, PlanRevision plan, ImmutableArray<KeptForecast> forecasts, OpenedCase from) => Save(
        patient.Code,
        OfCase(patient, from),
        OfPlan(plan, from.PlanStamp?.Reference),
        new Draft(RecordKind.Forecasts, from.ForecastsStamp?.Reference, ForecastJson.Write(forecasts)));

    /// <summary>How often readings fell into the band of the forecast before them, over all cases of the store.</summary>
    /// <param name="library">Says from how many on the rate is told, and under what it warns.</param>
    public HitRate HitRate(ClinicalLibrary library)
    {
        ImmutableArray<(int Scored, int Hits)> cases = List(row => (CaseSummary.Count(row, CaseSummary.ForecastsScored), CaseSummary.Count(row, CaseSummary.ForecastHits))).Cases;
        return Core.Forecasts.HitRate.Of(cases.Sum(one => one.Scored), cases.Sum(one => one.Hits), library);
    }

    private static Draft OfCase(Case patient, OpenedCase? from) => new(RecordKind.Case, from?.CaseStamp.Reference, CaseJson.Write(patient));

    private static Draft OfPlan(PlanRevision plan, RevisionRef? basedOn) => new(RecordKind.Plan, basedOn, PlanJson.Write(plan));

    private SaveResult Save(CaseCode code, params ImmutableArray<Draft> drafts) =>
        _trail.Refusal(ClinicAct.ChangeCase, code.Text) is { } why
            ? new SaveResult.NotSaved(why, Refusal.Refused)
            : Told(store.Append(new Submission(code.Text, drafts, By, clock.GetUtcNow())));

    private void Require(ClinicAct act, string? code)
    {
        if (_trail.Refusal(act, code) is { } why)
        {
            throw new StoreException(StoreFault.Refused, why);
        }
    }

    internal static SaveResult Told(AppendResult result) => result switch
    {
        AppendResult.Saved saved => new SaveResult.Saved(saved.Stamps),
        AppendResult.Conflict conflict => new SaveResult.NotSaved(ConflictWords(conflict.Current), Refusal.TryLater),
        AppendResult.Busy busy => new SaveResult.NotSaved(
            $"The store is in use{(busy.Holder is null ? "" : $" by {busy.Holder}")}. Try again.", Refusal.TryLater),
        AppendResult.NoSpace => new SaveResult.NotSaved("There is too little room on the disk. Make room and try again; nothing was lost.", Refusal.NoSpace),
        AppendResult.Corrupt corrupt => new SaveResult.NotSaved($"The records are damaged and take no more: {corrupt.What}", Refusal.Damaged),
        AppendResult.Refused refused => new SaveResult.NotSaved(refused.Why, Refusal.Refused),
        _ => throw new InvalidOperationException($"A result of the store that is not known: {result.GetType().Name}."),
    };

    private static string ConflictWords(ImmutableArray<RevisionStamp> current) => current.IsEmpty
        ? "What this was made from is not in the store. Open the case again."
        : "Somebody saved first: " + string.Join("; ", current.Select(stamp => $"{stamp.Kind.ToString().ToLowerInvariant()} revision {stamp.Revision} by {stamp.By.Name} at {stamp.At:yyyy-MM-dd HH:mm} UTC"))
            + ". Nothing was overwritten; open the case again and make the change there.";
}
