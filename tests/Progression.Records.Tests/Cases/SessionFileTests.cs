using System.Text;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Records.Cases;
using Progression.Records.Library;

namespace Progression.Records.Tests.Cases;

/// <summary>Sessions read into the case they belong to.</summary>
public sealed class SessionFileTests
{
    private static readonly Case Patient = CaseText.Read(CaseText.Good).Case!;

    [Fact]
    public void Two_sessions_of_one_day_are_logged_one_after_the_other()
    {
        SessionFileResult result = Read("sessions: [{date: 2026-03-07, contractions: 15}, {date: 2026-03-07, contractions: 12}, {date: 2026-03-05, contractions: 0}]");

        Assert.Empty(result.Queries);
        Assert.Equal([(5, 0), (6, 10), (7, 15), (7, 12)], result.Case!.Sessions.Select(session => (session.Date.Day, session.Contractions)));
        Assert.Equal([(5, 0), (7, 15), (7, 12)], result.Logged.Select(session => (session.Date.Day, session.Contractions)));
    }

    [Fact]
    public void The_very_same_session_again_is_asked_back_and_still_read()
    {
        SessionFileResult result = Read("sessions: [{date: 2026-03-06, contractions: 10, peak: 38 mA}]");

        Assert.Equal(2, result.Case!.Sessions.Length);
        Assert.Contains("logged for this day already", Assert.Single(result.Queries).Wrong, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_known_later_completes_a_session_and_leaves_the_rest_of_it()
    {
        SessionFileResult result = Read("complete: [{date: 2026-03-06, pain_next_morning: 3, skin: clear}]");

        SessionLog now = Assert.Single(result.Case!.Sessions);
        Assert.Equal((3, SkinCheck.Clear, 10, 38), (now.PainNextMorning, now.Skin, now.Contractions, now.Peak!.Milliamperes));
        Assert.Same(now, Assert.Single(result.Logged));
    }

    [Fact]
    public void Of_two_sessions_of_a_day_the_one_named_is_completed()
    {
        SessionFileResult result = Read("sessions: [{date: 2026-03-06, contractions: 15}]\ncomplete: [{date: 2026-03-06, session: 2, pain_next_morning: 0}]");

        Assert.Equal([null, 0], result.Case!.Sessions.Select(session => session.PainNextMorning));
    }

    [Fact]
    public void The_documented_example_goes_into_the_documented_case()
    {
        ClinicalLibrary library = LibraryReader.Default();
        Case patient = CaseFileReader.Read(Path.Combine(AppContext.BaseDirectory, "case.yaml"), library, new DateOnly(2026, 3, 7)).Case!;

        SessionFileResult result = SessionFileReader.Read(Path.Combine(AppContext.BaseDirectory, "session.yaml"), patient, library, new DateOnly(2026, 3, 7));

        Assert.Empty(result.Problems);
        Assert.Empty(result.Queries);
        Assert.Equal([(5, 3), (6, 3), (7, null)], result.Case!.Sessions.Select(session => (session.Date.Day, session.PainNextMorning)));
    }

    private static SessionFileResult Read(string text) => SessionFileReader.Read(
        WrittenFile.Of("session.yaml", Encoding.UTF8.GetBytes("schema: session-file/1\n" + text)), Patient, SmallLibrary.Value, CaseText.Today);
}
