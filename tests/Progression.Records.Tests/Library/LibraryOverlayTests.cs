using Progression.Core.Library;
using Progression.Records.Library;

namespace Progression.Records.Tests.Library;

public sealed class LibraryOverlayTests
{
    private const string Gate = """
        limits:
          ladder.stop-index:
            title: Index at which stim may stop
            value: 60 %
            source: Our clinic's protocol
            standing: common practice
        """;

    [Fact]
    public void An_empty_folder_changes_nothing()
    {
        using ClinicFolder clinic = ClinicFolder.Empty();

        Assert.Equal(LibraryReader.Default().Version, clinic.Read().Library!.Version);
    }

    [Fact]
    public void The_same_id_replaces_one_entry_and_leaves_the_rest()
    {
        using ClinicFolder clinic = ClinicFolder.With("limits", Gate);
        ClinicalLibrary library = clinic.Read().Library!;

        Assert.Equal("60 %", library.Limit(LimitIds.StopIndex).Text);
        Assert.Equal("Our clinic's protocol", library.Limit(LimitIds.StopIndex).Source.Text);
        Assert.Equal("55 %", library.Limit(LimitIds.StopPreOp).Text);
    }

    [Fact]
    public void A_new_regimen_is_added_and_may_be_made_the_usual_one()
    {
        using ClinicFolder clinic = ClinicFolder.With("regimens", """
            default: ours
            regimens:
              ours:
                title: Our own
                population: Everyone after knee replacement
                contractions: 10
                on: 10 s
                off: 30 s
                sessions_a_day: 1
                days_a_week: 5
                intensity: open
                outcome: Not studied
                source: Our clinic's protocol
                standing: common practice
            """);
        ClinicalLibrary library = clinic.Read().Library!;

        Assert.Equal("ours", library.DefaultRegimen);
        Assert.Equal(LibraryReader.Default().Regimens.Count + 1, library.Regimens.Count);
        Assert.Equal(Standing.CommonPractice, library.Regimens["ours"].On.Standing);
        Assert.True(library.Regimens["ours"].Intensity.IsOpen && library.Regimens["ours"].Pad.IsOpen);
    }

    [Fact]
    public void An_entry_that_is_not_needed_can_be_removed()
    {
        using ClinicFolder clinic = ClinicFolder.With("exercises", "exercises: { prone-hang: { remove: yes } }")
            .And("regimens", "regimens: { before-the-operation: { remove: yes } }");
        ClinicalLibrary library = clinic.Read().Library!;

        Assert.DoesNotContain("prone-hang", library.Exercises.Keys);
        Assert.DoesNotContain("before-the-operation", library.Regimens.Keys);
    }

    [Fact]
    public void A_screening_item_of_ones_own_is_asked_last_and_a_replaced_one_keeps_its_place()
    {
        using ClinicFolder clinic = ClinicFolder.With("screening", """
            screening:
              clot: { question: Clot?, kind: contraindication, where: The limb, action: Stop, clearance: no, source: Ours, standing: common practice }
              tattoo: { question: Fresh tattoo?, kind: precaution, where: Local, action: Keep off, clearance: yes, source: Ours, standing: common practice }
            """);
        ClinicalLibrary library = clinic.Read().Library!;

        Assert.Equal("tattoo", library.Screening[^1].Id);
        Assert.Equal("clot", library.Screening[2].Id);
        Assert.False(library.Screening[2].CanBeCleared);
    }

    [Fact]
    public void The_version_changes_with_any_byte_and_with_nothing_else()
    {
        using ClinicFolder one = ClinicFolder.With("limits", Gate);
        using ClinicFolder same = ClinicFolder.With("limits", Gate);
        using ClinicFolder other = ClinicFolder.With("limits", Gate + "\n");

        Assert.Equal(one.Read().Library!.Version, same.Read().Library!.Version);
        Assert.NotEqual(one.Read().Library!.Version, other.Read().Library!.Version);
        Assert.NotEqual(one.Read().Library!.Version, LibraryReader.Default().Version);
        Assert.Matches("^[0-9a-f]{12}$", LibraryReader.Default().Version);
    }

    [Fact]
    public void Files_that_are_not_yaml_are_left_alone()
    {
        using ClinicFolder clinic = ClinicFolder.Empty();
        File.WriteAllText(Path.Combine(clinic.Path, "notes.txt"), "limits: 5");

        Assert.NotNull(clinic.Read().Library);
    }
}
