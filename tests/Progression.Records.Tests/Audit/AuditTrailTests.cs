using Progression.Core.Clinic;
using Progression.Records.Audit;
using Progression.Records.Storage;
using Progression.Records.Tests.Caseload;
using Progression.Records.Tests.Storage;

namespace Progression.Records.Tests.Audit;

public sealed class AuditTrailTests
{
    private readonly InMemoryPlanStore _store = new(Sample.Fields);

    [Fact]
    public void An_entry_says_who_when_what_and_with_which_revision()
    {
        AuditNote printed = new(AuditAct.Printed, "K-1", RecordKind.Plan, new(3, new string('a', 64)), "home sheet");

        Assert.Null(Trail(Sample.Alone()).Note(printed));
        StoredRevision entry = _store.Read(AuditChain.Code, RecordKind.Audit, 1)!;
        Assert.Equal((Sample.Therapist, Sample.Monday), (entry.Stamp.By, entry.Stamp.At));
        Assert.Equal(printed, AuditNoteJson.Read(entry.Body));
    }

    [Fact]
    public void What_a_role_does_not_allow_is_refused_and_written_down()
    {
        ClinicPerson therapist = new("1001", "robin", [ClinicRole.Therapist]);

        Assert.Null(Trail(therapist).Refusal(ClinicAct.ChangeCase, "K-1"));
        Assert.Equal(0, _store.Generation());
        Assert.Equal("To sign a plan takes a supervisor; the account robin is therapist.", Trail(therapist).Refusal(ClinicAct.SignPlan, "K-1"));
        Assert.Equal(
            new AuditNote(AuditAct.Refused, "K-1", What: "sign a plan"), AuditNoteJson.Read(_store.Read(AuditChain.Code, RecordKind.Audit, 1)!.Body));
    }

    private AuditTrail Trail(ClinicPerson person) => new(_store, person, new FixedClock(Sample.Monday));
}
