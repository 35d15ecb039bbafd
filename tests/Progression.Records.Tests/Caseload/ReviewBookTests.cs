using Progression.Core.Clinic;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Core.Reviews;
using Progression.Records.Audit;
using Progression.Records.Caseload;
using Progression.Records.Storage;
using Progression.Records.Tests.Plans;
using Progression.Records.Tests.Storage;

namespace Progression.Records.Tests.Caseload;

/// <summary>A therapist and a supervisor at one real store, each with a session of their own.</summary>
public sealed class ReviewBookTests : IDisposable
{
    private static readonly (Case Case, PlanRevision Plan) Made = InventedPlans.One();
    private static readonly ClinicPerson Robin = new("1001", "robin", [ClinicRole.Therapist]);
    private static readonly ClinicPerson Kim = new("1002", "kim", [ClinicRole.Supervisor]);
    private static readonly CellAddress Bend = new("bend", 3);
    private static readonly PlanRisk Fine = new(0, 0, 0, 0, null);
    private static readonly ReviewSaid Agreed = new() { Meaning = SignatureMeaning.Agreed, Risk = Fine };

    private readonly TempFolder _folder = new();
    private readonly CaseBook _robin;
    private readonly CaseBook _kim;

    public ReviewBookTests()
    {
        (_robin, _kim) = (Book(Robin), Book(Kim));
        Saved(_robin.Save(Made.Case, Made.Plan, null));
    }

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_plan_is_asked_for_returned_changed_asked_for_again_and_signed_and_a_later_edit_voids_the_signature()
    {
        Saved(Do(_robin, ReviewStep.Requested, new() { Risk = Fine }));
        Assert.Equal("robin", Assert.Single(_kim.Reviews.Waiting()).AskedBy);
        Saved(Do(_kim, ReviewStep.Returned, new() { Comments = [new(Bend, "Less in week 3.")] }));
        Assert.Equal("returned", SignatureWords.Brief(_robin.Open(Made.Case.Code)!.Standing!));

        Saved(_robin.Save(Emptied(), _robin.Open(Made.Case.Code)!.PlanStamp!.Reference));
        Saved(Do(_robin, ReviewStep.Requested, new() { Risk = new(0, 0, 1, 1, null) }));
        Saved(Do(_kim, ReviewStep.Signed, Agreed));

        OpenedReview signed = _robin.Reviews.Open(Made.Case.Code)!;
        Assert.Equal(SignatureState.Signed, signed.Review.Standing.State);
        Assert.Equal(PlanRevisionText(Emptied()), PlanRevisionText(signed.Signed!));
        Assert.Empty(_kim.Reviews.Waiting());
        Assert.Equal("2", Row().Fields[CaseSummary.Signed]);

        Saved(_robin.Save(Made.Plan, _robin.Open(Made.Case.Code)!.PlanStamp!.Reference));
        Assert.Equal(SignatureState.ChangedSince, _kim.Open(Made.Case.Code)!.Standing!.State);
        Assert.Equal(Bend, Assert.Single(PlanDifference.Between(signed.Signed!, _kim.Reviews.Open(Made.Case.Code)!.Plan)).Address);
    }

    [Fact]
    public void What_waits_is_told_with_who_asked_and_what_was_found()
    {
        Saved(Do(_robin, ReviewStep.Requested, new() { Risk = new(0, 1, 2, 3, 4) }));

        WaitingReview waits = Assert.Single(_kim.Reviews.Waiting());
        Assert.Equal(new WaitingReview(Made.Case.Code, new(2026, 2, 2), "robin", "1001", Sample.Monday, 1, 1, new(0, 1, 2, 3, 4)), waits);
        Saved(_robin.Save(Emptied(), _robin.Open(Made.Case.Code)!.PlanStamp!.Reference));
        Assert.True(Assert.Single(_kim.Reviews.Waiting()).IsStale);
        Saved(Do(_robin, ReviewStep.Withdrawn, new()));
        Assert.Empty(_kim.Reviews.Waiting());
    }

    [Fact]
    public void A_plan_that_was_saved_while_it_was_read_is_not_signed()
    {
        Saved(Do(_robin, ReviewStep.Requested, new() { Risk = Fine }));
        OpenedReview read = _kim.Reviews.Open(Made.Case.Code)!;
        Saved(_robin.Save(Emptied(), _robin.Open(Made.Case.Code)!.PlanStamp!.Reference));

        SaveResult.NotSaved refused = Assert.IsType<SaveResult.NotSaved>(_kim.Reviews.Do(read, ReviewStep.Signed, Agreed));

        Assert.Equal(Refusal.TryLater, refused.Kind);
        Assert.Contains("plan revision 2 by robin", refused.Why, StringComparison.Ordinal);
        Assert.Equal(SignatureState.Unsigned, _kim.Open(Made.Case.Code)!.Standing!.State);
    }

    [Fact]
    public void A_comment_goes_beside_what_somebody_else_said_in_between_and_a_signature_does_not()
    {
        Saved(Do(_robin, ReviewStep.Requested, new() { Risk = Fine }));
        (OpenedReview mine, OpenedReview theirs) = (_robin.Reviews.Open(Made.Case.Code)!, _kim.Reviews.Open(Made.Case.Code)!);
        Saved(_robin.Reviews.Do(mine, ReviewStep.Commented, Says("from robin")));
        Saved(_kim.Reviews.Do(theirs, ReviewStep.Commented, Says("from kim")));

        Assert.IsType<SaveResult.NotSaved>(_kim.Reviews.Do(theirs, ReviewStep.Signed, Agreed));
        Assert.Equal(["from robin", "from kim"], _kim.Open(Made.Case.Code)!.Review.Comments.Select(said => said.Comment.Text));
    }

    [Fact]
    public void A_wrong_role_and_ones_own_plan_are_refused_and_written_down()
    {
        CaseBook both = Book(new ClinicPerson("1001", "robin", [ClinicRole.Therapist, ClinicRole.Supervisor]));
        Saved(Do(_robin, ReviewStep.Requested, new() { Risk = Fine }));

        Assert.Contains("takes a supervisor", Refused(Do(_robin, ReviewStep.Signed, Agreed)), StringComparison.Ordinal);
        Assert.Contains("nobody signs what they made", Refused(Do(both, ReviewStep.Signed, Agreed)), StringComparison.Ordinal);
        Assert.Equal(SignatureState.Unsigned, _kim.Again(Made.Case.Code)!.Standing!.State);
        Assert.Equal(
            [(AuditAct.Refused, "K-014", "sign a plan"), (AuditAct.Refused, "K-014", "sign a plan")],
            Store().History(AuditChain.Code, RecordKind.Audit).Select(entry => AuditNoteJson.Read(Store().Read(AuditChain.Code, RecordKind.Audit, entry.Revision)!.Body))
                .Select(note => (note.Act, note.CaseCode!, note.What)));
    }

    [Fact]
    public void The_whole_course_stands_up_to_the_audit_of_reviews_and_a_line_forged_by_the_author_does_not()
    {
        Saved(Do(_robin, ReviewStep.Requested, new() { Risk = Fine }));
        OpenedReview open = _robin.Reviews.Open(Made.Case.Code)!;
        ReviewAct forged = new()
        {
            Step = ReviewStep.Signed,
            By = new("1001", "robin", ClinicRole.Supervisor),
            At = Sample.Monday,
            Plan = open.Review.Newest.Reference,
            Meaning = SignatureMeaning.Agreed,
            Risk = Fine,
        };
        ReviewAudit audit = new("K-014");
        audit.Plan(open.Review.Newest);

        Assert.Empty(audit.Review(1, "1001", Sample.Monday, open.Review.Record));
        Assert.Contains("nobody signs what they made", Assert.Single(audit.Review(2, "1001", Sample.Monday, open.Review.Record.With(forged))), StringComparison.Ordinal);
    }

    [Fact]
    public void Signatures_that_another_program_wrote_are_named_by_going_through_the_records()
    {
        Saved(Do(_robin, ReviewStep.Requested, new() { Risk = Fine }));
        OpenedReview open = _robin.Reviews.Open(Made.Case.Code)!;
        Assert.Empty(ReviewCheck.Problems(Store()));
        ReviewAct forged = new() { Step = ReviewStep.Signed, By = new("1002", "kim", ClinicRole.Supervisor), At = Sample.Monday, Plan = open.Review.Newest.Reference, Meaning = SignatureMeaning.Agreed, Risk = Fine };
        Draft draft = new(RecordKind.Review, open.ReviewStamp!.Reference, Records.Reviews.ReviewJson.Write(open.Review.Record.With(forged)));
        Assert.IsType<AppendResult.Saved>(Store().Append(Sample.Of("K-014", draft)));

        Assert.Equal(
            ["Case K-014, review revision 2: kim (1002) signed for plan revision 1, which does not hold. It was saved by the account 1001."], ReviewCheck.Problems(Store()));
    }

    private CaseRow Row() => Assert.Single(_kim.List(new CaseQuery()).Rows);

    private static SaveResult Do(CaseBook book, ReviewStep step, ReviewSaid said) => book.Reviews.Do(book.Reviews.Open(Made.Case.Code)!, step, said);

    private static ReviewSaid Says(string text) => new() { Comments = [new(null, text)] };

    private static PlanRevision Emptied() => PlanEdit.Set(Made.Plan, Bend, null);

    private static string PlanRevisionText(PlanRevision plan) => Records.Plans.PlanJson.Write(plan);

    private static SaveResult.Saved Saved(SaveResult result) => Assert.IsType<SaveResult.Saved>(result);

    private static string Refused(SaveResult result) => Assert.IsType<SaveResult.NotSaved>(result).Why;

    private LiteDbPlanStore Store() => new(new StoreOptions(_folder.Path, CaseSummary.Of));

    private CaseBook Book(ClinicPerson person) => new(Store(), person, new FixedClock(Sample.Monday));
}
