using System.Runtime.Versioning;
using Progression.Core.Clinic;
using Progression.Records.Clinic;
using Progression.Records.Tests.Storage;

namespace Progression.Records.Tests.Clinic;

/// <summary>Who works on a folder, and which folders are not opened. Group numbers are those of Debian's base-passwd: daemon 1, staff 50, games 60.</summary>
[SupportedOSPlatform("linux")]
public sealed class ClinicAccessTests
{
    [Fact]
    public void A_folder_that_only_its_owner_can_enter_is_that_persons_own()
    {
        using TempFolder folder = new();
        ProcessFacts me = ProcessFacts.Current(_ => null);

        ClinicAccess access = ClinicAccess.Of(folder.Path, me);

        Assert.True(access.IsGood, access.Refusal);
        Assert.Equal($"{me.EffectiveUser}", access.Person!.UserId);
        Assert.Equal([ClinicRole.Therapist, ClinicRole.Lead], access.Person.Roles);
        Assert.Equal((UnixFileMode)63, access.Umask);
        Assert.True(ClinicAccess.Of(folder.File("not/there/yet"), me).IsGood);
    }

    [Theory]
    [InlineData(0, "")]
    [InlineData(1, "Therapist")]
    [InlineData(60, "Supervisor")]
    [InlineData(50, "Lead")]
    public void Groups_say_who_is_what(uint group, string role)
    {
        using ClinicFolder clinic = ClinicFolder.With(ClinicFolder.Own);

        ClinicAccess access = clinic.As(ClinicFolder.Somebody(group));

        Assert.True(access.IsGood, access.Refusal);
        Assert.Equal("4711", access.Person!.UserId);
        Assert.Equal(role, string.Join(' ', access.Person.Roles));
        Assert.Equal((UnixFileMode)7, access.Umask);
    }

    [Fact]
    public void Somebody_may_be_several_things_and_the_superuser_is_only_the_keeper()
    {
        using ClinicFolder clinic = ClinicFolder.With(ClinicFolder.Own);

        Assert.Equal([ClinicRole.Therapist, ClinicRole.Supervisor], clinic.As(ClinicFolder.Somebody(60, 1)).Person!.Roles);
        Assert.Equal(("root", ClinicRole.Keeper), (clinic.As(ClinicFolder.Process(0)).Person!.Name, Assert.Single(clinic.As(ClinicFolder.Process(0)).Person!.Roles)));
    }

    [Fact]
    public void Who_calls_sudo_counts_for_nothing_where_people_work_under_their_own_account()
    {
        using ClinicFolder clinic = ClinicFolder.With(ClinicFolder.Own);

        ClinicPerson person = clinic.As(ClinicFolder.Somebody(1) with { SudoUser = "0", LoginUser = 1 }).Person!;

        Assert.Equal(("4711", ClinicRole.Therapist), (person.UserId, Assert.Single(person.Roles)));
    }

    // Account 1 of every Debian is daemon, a member of the group daemon alone.
    [Fact]
    public void Through_sudo_the_person_is_who_called_it_with_the_groups_of_that_account()
    {
        using ClinicFolder clinic = ClinicFolder.With(ClinicFolder.Sudo);
        ProcessFacts records = ClinicFolder.Process(4000);

        ClinicAccess access = clinic.As(records with { SudoUser = "1", LoginUser = 1 });

        Assert.True(access.IsGood, access.Refusal);
        Assert.Equal(("1", "daemon", ClinicRole.Therapist), (access.Person!.UserId, access.Person.Name, Assert.Single(access.Person.Roles)));
        Assert.Equal((UnixFileMode)63, access.Umask);
        Assert.Equal([ClinicRole.Keeper], clinic.As(records with { SudoUser = "0", LoginUser = 1000 }).Person!.Roles);
        Assert.Empty(clinic.As(records with { SudoUser = "4711" }).Person!.Roles);
    }

    [Theory]
    [InlineData(4000, null, null, "sudo did not start the program")]
    [InlineData(4000, "anna", null, "sudo did not start the program")]
    [InlineData(4000, "-1", null, "sudo did not start the program")]
    [InlineData(4000, "1", 2, "sudo names daemon; bin signed in.")]
    [InlineData(4711, "1", 1, "It runs as 4711.")]
    [InlineData(0, null, null, "It runs as root.")]
    public void Nobody_else_is_taken_for_the_person_who_called_sudo(uint runs, string? sudo, int? login, string found)
    {
        using ClinicFolder clinic = ClinicFolder.With(ClinicFolder.Sudo);

        ClinicAccess access = clinic.As(ClinicFolder.Process(runs) with { SudoUser = sudo, LoginUser = (uint?)login });

        Assert.False(access.IsGood);
        Assert.Contains(found, access.Refusal, StringComparison.Ordinal);
    }

    [Fact]
    public void A_program_that_changes_its_account_by_itself_is_refused()
    {
        using ClinicFolder clinic = ClinicFolder.With(ClinicFolder.Sudo);
        ProcessFacts process = new() { RealUser = 4711, EffectiveUser = 4000, Groups = [4711], SudoUser = "1" };

        Assert.Contains("started by 4711 and runs as 4000", clinic.As(process).Refusal, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_the_clinics_file_went_missing_nobody_who_comes_by_sudo_gets_in()
    {
        using ClinicFolder clinic = ClinicFolder.With(ClinicFolder.Sudo);
        clinic.Do("rm clinic.yaml");

        Assert.Contains("sudo started the program for daemon", clinic.As(ClinicFolder.Process(4000) with { SudoUser = "1" }).Refusal, StringComparison.Ordinal);
        Assert.False(clinic.As(ClinicFolder.Process(0)).IsGood);
    }
}
