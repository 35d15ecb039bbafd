using System.Collections.Immutable;
using System.Text;
using Progression.Core.Clinic;
using Progression.Records.Clinic;
using Progression.Records.Yaml;

namespace Progression.Records.Tests.Clinic;

public sealed class ClinicFileTests
{
    [Fact]
    public void The_example_can_be_read_and_says_what_its_comments_say()
    {
        ClinicSettings settings = Read(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "clinic.yaml"))).Settings!;

        Assert.Equal(("Invented knee clinic", ClinicAccounts.Own, "clinic", false), (settings.Name, settings.Accounts, settings.Group, settings.Syslog));
        Assert.Equal(
            [(ClinicRole.Therapist, "clinic-therapists"), (ClinicRole.Supervisor, "clinic-supervisors"), (ClinicRole.Lead, "clinic-leads")], settings.Roles);
    }

    [Theory]
    [InlineData("", "holds no fields")]
    [InlineData("accounts: both", "own, sudo")]
    [InlineData("accounts: own\nroles:\n  lead: [a]", "group")]
    [InlineData("accounts: sudo\ngroup: clinic\nroles:\n  lead: [a]", "shares the folder only where")]
    [InlineData("accounts: sudo", "roles")]
    [InlineData("accounts: sudo\nroles:\n  keeper: [root]", "no such field")]
    [InlineData("accounts: sudo\nroles:\n  leed: [a]", "Did you mean \"lead\"?")]
    [InlineData("accounts: sudo\nroles:\n  lead: [\"a; rm -rf b\"]", "cannot be a group")]
    [InlineData("accounts: sudo\nroles:\n  lead: [\"-x\"]", "cannot be a group")]
    [InlineData("accounts: sudo\nroles:\n  lead: clinic", "list")]
    [InlineData("accounts: sudo\nroles:\n  lead: [a]\nsyslog: maybe", "yes, no")]
    [InlineData("accounts: sudo\naccounts: own\nroles:\n  lead: [a]", "accounts")]
    [InlineData("accounts: &x sudo\nroles:\n  lead: [a]", "anchor")]
    public void Anything_else_is_refused_and_sets_nothing(string text, string told)
    {
        (ClinicSettings? settings, ImmutableArray<FileProblem> problems) = Read(text);

        Assert.Null(settings);
        Assert.Contains(problems, problem => problem.ToString().Contains(told, StringComparison.OrdinalIgnoreCase));
    }

    private static (ClinicSettings? Settings, ImmutableArray<FileProblem> Problems) Read(string text) => ClinicFile.Read("clinic.yaml", Encoding.UTF8.GetBytes(text));
}
