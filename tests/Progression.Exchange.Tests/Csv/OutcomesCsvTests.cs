using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Core.Outcomes;
using Progression.Core.Statistics;
using Progression.Exchange.Csv;
using Progression.Records.Library;

namespace Progression.Exchange.Tests.Csv;

public sealed class OutcomesCsvTests
{
    private static readonly ClinicalLibrary Library = LibraryReader.Default();
    private static readonly OutcomeYardstick By = OutcomeYardstick.Of(Library, new DateOnly(2026, 11, 25));

    [Fact] // Six people, all in week 2: RFC 4180 lines; what is withheld has empty cells and says so.
    public void Every_figure_is_a_row_with_its_number_of_people()
    {
        string[] rows = OutcomesCsv.Of(ClinicSummary.Of([.. Enumerable.Repeat(Case("a"), 6)], By, null)).Split("\r\n");

        Assert.Equal("group,what,id,title,unit,people,events,value,low,high,range,withheld", rows[0]);
        Assert.Contains("all,cases,cases,Cases,1,6,,6,,,,no", rows);
        Assert.Contains("all,wait,flexion-week-1,Bends to 80 deg,wk,6,6,2,,,interval 95 %,no", rows);
        Assert.Contains("all,reached,flexion-week-1@1,\"Bends to 80 deg, reached by week 1\",%,6,,0,,,interval 95 %,no", rows);
        Assert.Contains("all,wait,flexion-week-2,Bends to 90 deg,wk,,,,,,interval 95 %,yes", rows);
        Assert.Equal("", rows[^1]);
    }

    [Fact]
    public void The_name_of_a_clinics_own_regimen_is_not_run_by_a_spreadsheet() =>
        Assert.Contains("'=1+1,cases,cases,Cases,1,6,,6,,,,no", OutcomesCsv.Of(ClinicSummary.Of([.. Enumerable.Repeat(Case("=1+1"), 6)], By, one => one.Regimen!)), StringComparison.Ordinal);

    private static CaseOutcome Case(string regimen) => new()
    {
        Year = 2026,
        Regimen = regimen,
        Waits = ImmutableDictionary<string, OutcomeWait>.Empty.Add("flexion-week-1", new OutcomeWait(new Followed(2, true), 1)),
        Adherence = null,
        Delivered = null,
        Scored = 0,
        Hits = 0,
    };
}
