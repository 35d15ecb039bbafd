using System.Text.Json.Nodes;
using Progression.App.Tests.Stores;
using Progression.Core.Clinic;
using Progression.Records.Storage;

namespace Progression.App.Tests.Commands.Summary;

/// <summary><c>progression summary</c> on the demo's store, on 25 November 2026.</summary>
public sealed class SummaryCommandTests : IDisposable
{
    private readonly TempStore _temp = new();

    public SummaryCommandTests() => Assert.Equal(0, _temp.Run("demo").Code);

    public void Dispose() => _temp.Dispose();

    [Fact] // Twelve invented knees, of which eleven are seen to bend to 80 deg; adherence rests on fewer than five.
    public void Tells_the_figures_and_what_is_kept_back()
    {
        CommandRun run = Summary();

        Assert.Equal((0, ""), (run.Code, run.Messages));
        Assert.StartsWith("All cases on 2026-11-25: 12 cases", run.Data, StringComparison.Ordinal);
        Assert.Contains("Bends to 80 deg                           12    11  1.6 (", run.Data, StringComparison.Ordinal);
        Assert.Contains("Adherence. Not told: fewer than 5 people are behind it", run.Data, StringComparison.Ordinal);
        Assert.Contains("A goal is seen at visits only", run.Data, StringComparison.Ordinal);
        Assert.All(run.Data.Split('\n'), line => Assert.InRange(line.TrimEnd().Length, 0, 112));
    }

    [Fact]
    public void No_case_is_named_anywhere()
    {
        string[] codes = [.. _temp.Run("list", "--store", _temp.Demo).Data.Split('\n').Select(line => line.Split(' ')[0]).Where(word => word.Contains('-', StringComparison.Ordinal))];

        Assert.Equal(12, codes.Length);
        Assert.All(codes, code => Assert.DoesNotContain(code, Summary().Data + Summary("--csv").Data + Summary("--json").Data, StringComparison.Ordinal));
    }

    [Fact]
    public void Text_csv_and_json_tell_the_same()
    {
        JsonNode json = JsonNode.Parse(Summary("--json").Data)!;
        string[] rows = Summary("--csv").Data.TrimEnd().Split(Environment.NewLine);

        Assert.Equal("group,what,id,title,unit,people,events,value,low,high,range,withheld", rows[0]);
        Assert.Equal(rows.Length - 1, json["figures"]!.AsArray().Count);
        JsonNode bends = json["figures"]!.AsArray().Single(one => (string)one!["id"]! == "flexion-week-1" && (string)one["what"]! == "wait")!;
        Assert.Equal((12, 11), ((int)bends["people"]!, (int)bends["events"]!));
        Assert.Contains(rows, row => row.StartsWith("all,wait,flexion-week-1,Bends to 80 deg,wk,12,11,1.571,", StringComparison.Ordinal));
        Assert.Contains(rows, row => row.StartsWith("all,wait,lag-closed,\"Extension lag closed, as the stim ladder asks (at most 5 deg, confirmed)\",wk,12,", StringComparison.Ordinal));
        Assert.Contains(rows, row => row == "all,adherence,sessions,\"Stim sessions done of those planned in logged weeks, all together\",%,,,,,,,yes");
    }

    [Fact]
    public void Groups_stand_beside_all()
    {
        JsonNode json = JsonNode.Parse(Summary("--json", "--by", "year").Data)!;

        Assert.Equal(["all", "2026"], json["figures"]!.AsArray().Select(one => (string)one!["group"]!).Distinct());
    }

    [Theory]
    [InlineData("plot.svg", "<svg")]
    [InlineData("plot.png", "PNG")]
    public void Draws_a_curve_and_writes_over_nothing(string name, string begins)
    {
        string file = Path.Combine(_temp.DataHome, name);

        CommandRun first = Summary("--plot", file, "--goal", "flexion-week-1");
        CommandRun second = Summary("--plot", file);

        Assert.Equal((0, 73), (first.Code, second.Code));
        Assert.Contains(begins, File.ReadAllText(file)[..200], StringComparison.Ordinal);
        Assert.Contains("written to", first.Messages, StringComparison.Ordinal);
        Assert.Equal(0, Summary("--plot", file, "--force").Code);
    }

    [Theory]
    [InlineData("--by therapist", "regimen")]
    [InlineData("--goal flexion", "lag-closed")]
    [InlineData("--plot figures.pdf", ".svg or .png")]
    [InlineData("--csv --json", "one way")]
    public void Refuses_what_it_does_not_know_and_says_what_it_does(string words, string allowed)
    {
        CommandRun run = Summary(words.Split(' '));

        Assert.Equal((64, ""), (run.Code, run.Data));
        Assert.Contains(allowed, run.Messages, StringComparison.Ordinal);
    }

    [Fact]
    public void A_folder_without_records_is_told()
    {
        string nowhere = Path.Combine(_temp.DataHome, "nowhere");

        Assert.Equal(66, _temp.Run("summary", "--store", nowhere).Code);
        Assert.False(Directory.Exists(nowhere));
    }

    [Fact] // One entry for all cases together; none says that a case was opened.
    public void Looking_is_written_down_once()
    {
        Summary();

        string[] told = _temp.Run("audit", "--act", "viewed", "--store", _temp.Demo).Data.Split(Environment.NewLine);
        Assert.EndsWith("viewed (the clinic's figures, 12 cases)", told[0], StringComparison.Ordinal);
        Assert.StartsWith("1 of ", told[1], StringComparison.Ordinal);
    }

    [Fact]
    public void A_therapist_of_a_clinic_is_refused_and_that_is_written_down()
    {
        ClinicPerson therapist = new("1002", "theo", [ClinicRole.Therapist]);
        StoreException refused = Assert.Throws<StoreException>(() => _temp.Open(_temp.Demo, person: therapist).Book.Figures(_ => 1, new Progress<WorkDone>()));

        Assert.Equal(StoreFault.Refused, refused.Fault);
        Assert.Contains("To see the clinic's figures takes a supervisor or lead", refused.Message, StringComparison.Ordinal);
        Assert.Contains("theo [1002]  refused (see the clinic's figures)", _temp.Run("audit", "--act", "refused", "--store", _temp.Demo).Data, StringComparison.Ordinal);
    }

    [Fact] // As Ctrl+C does it: whoever hears how far it is throws.
    public void It_can_be_broken_off_between_two_cases()
    {
        int heard = 0;
        Asking asking = new(() => heard++ == 3);

        Assert.Throws<OperationCanceledException>(() => _temp.Open(_temp.Demo).Book.Figures(_ => 1, asking));
        Assert.Equal(4, heard);
        Assert.DoesNotContain("clinic's figures", _temp.Run("audit", "--store", _temp.Demo).Data, StringComparison.Ordinal);
    }

    [Fact]
    public void A_case_that_cannot_be_read_is_counted_and_left_out()
    {
        LiteDbPlanStore store = new(new StoreOptions(_temp.Demo, (_, _) => new Dictionary<string, string>()) { FieldsVersion = 99 });
        store.Append(new Submission("ODD-01", [new Draft(RecordKind.Case, null, "{\"schema\":\"other/1\"}")], TempStore.Anna, _temp.Clock.Now));

        CommandRun run = Summary();

        Assert.Equal(0, run.Code);
        Assert.Contains("1 cases could not be read", run.Messages, StringComparison.Ordinal);
        Assert.Contains("12 cases", run.Data, StringComparison.Ordinal);
    }

    private CommandRun Summary(params string[] words) => _temp.Run(["summary", "--store", _temp.Demo, .. words]);

    private sealed class Asking(Func<bool> isAsked) : IProgress<WorkDone>
    {
        public void Report(WorkDone value)
        {
            if (isAsked())
            {
                throw new OperationCanceledException();
            }
        }
    }
}
