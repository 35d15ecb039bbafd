using Progression.Core.Clinic;

namespace Progression.Core.Tests.Clinic;

public sealed class PermissionTests
{
    // T therapist, S supervisor, L lead, K keeper. Common practice, no source.
    [Theory]
    [InlineData(ClinicAct.ViewCase, "TSL")]
    [InlineData(ClinicAct.ChangeCase, "T")]
    [InlineData(ClinicAct.RequestReview, "T")]
    [InlineData(ClinicAct.Comment, "TS")]
    [InlineData(ClinicAct.ReturnPlan, "S")]
    [InlineData(ClinicAct.SignPlan, "S")]
    [InlineData(ClinicAct.PrintPlan, "TS")]
    [InlineData(ClinicAct.ExportCase, "TSL")]
    [InlineData(ClinicAct.ReadAudit, "SLK")]
    [InlineData(ClinicAct.CheckRecords, "TSLK")]
    [InlineData(ClinicAct.RebuildRecords, "LK")]
    [InlineData(ClinicAct.BackUpRecords, "LK")]
    [InlineData(ClinicAct.RestoreRecords, "LK")]
    [InlineData(ClinicAct.ExportRecords, "LK")]
    [InlineData(ClinicAct.ImportRecords, "LK")]
    [InlineData(ClinicAct.SeeFigures, "SL")]
    public void Each_act_is_for_these_roles_and_no_other(ClinicAct act, string letters) =>
        Assert.Equal(letters, string.Concat(Enum.GetValues<ClinicRole>().Where(role => Permission.Of(role, act)).Select(role => $"{role}"[0])));

    [Fact]
    public void Every_act_has_its_row() => Assert.All(Enum.GetValues<ClinicAct>(), act => Assert.NotEmpty(Permission.Words(act)));

    [Fact]
    public void A_refusal_says_who_may_and_what_the_account_is()
    {
        Assert.Equal(
            "To sign a plan takes a supervisor; the account robin is therapist and lead.",
            Permission.WhyNot(ClinicPerson.Alone("1001", "robin"), ClinicAct.SignPlan));
        Assert.Equal(
            "To comment on a plan takes a therapist or supervisor; the account guest has no role in this clinic.",
            Permission.WhyNot(new ClinicPerson("1009", "guest", []), ClinicAct.Comment));
    }

    [Fact]
    public void Roles_of_one_person_add_up()
    {
        ClinicPerson both = new("1002", "kim", [ClinicRole.Therapist, ClinicRole.Supervisor]);

        Assert.Null(Permission.WhyNot(both, ClinicAct.ChangeCase));
        Assert.Null(Permission.WhyNot(both, ClinicAct.SignPlan));
        Assert.NotNull(Permission.WhyNot(both, ClinicAct.RestoreRecords));
    }
}
