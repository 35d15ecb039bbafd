using System.Text;
using Progression.App.Tests.Commands;
using Progression.App.Tests.Commands.Plans;

namespace Progression.App.Tests.Injection;

/// <summary>Words on the command line, names of files and folders, and what stands in files: neither stream of any command carries what a terminal would obey.</summary>
public sealed class InjectionInCommandsTests : IDisposable
{
    private const int AtOnce = 12;

    // A word in every place where a person can put one; the first ones cost little and are tried with every text.
    private static readonly string[] Cheap = ["draft #"];

    private static readonly string[] Dear =
    [
        "#", "--#", "# --help", "list --only #", "list --order # --json", "list --find #", "list --find # --json", "list --store #", "dose --on #", "open #", "dose # --json", "dose --peak #", "dose --pad # --json", "check # --json", "draft # --save --width #", "why # --week # --lane #", "example #", "completion #", "plain #", "compare # --json",
        "forecast # --measure #", "log # --from #", "reassess # --from #", "manual #", "library show #", "library #", "demo #", "check x --debug #",
        "compare K-100 --store #", "check K-100 --store # --json", "draft CASE --regimen #", "draft CASE --weeks #", "draft CASE --library #", "why CASE --week 1 --lane #", "why CASE --week # --lane stim", "library check #",
        "forecast CASE --measure #", "library show # --json", "log EXAMPLE-07 --from #", "reassess EXAMPLE-07 --from # --json", "reassess EXAMPLE-07 --from VISIT --accept none --reason #",
    ];

    private static readonly string[] OnFiles = ["check", "check --json", "draft --json", "draft", "why --week 2 --lane stim", "compare", "compare --json"];
    private static readonly string[] Fixed =
        ["--help", "dose --help", "draft --help", "library --help", "plain --help", "manual", "completion bash", "completion zsh", "completion fish", "--version", "library list", "example"];

    private readonly PlanBench _bench = new();

    public void Dispose() => _bench.Dispose();

    [Fact]
    public void Any_word_on_the_command_line() => Assert.All(HostileText.All, text => Assert.All(Cheap, line => Harmless(line, text)));

    [Fact]
    public void Any_word_where_a_command_has_more_to_do()
    {
        string made = _bench.File(PlanBench.Example, "CASE");
        string visit = _bench.File(CommandRun.Of("example", "assessment").Data, "VISIT");
        _bench.Run("draft", made, "--save");
        // Every text, some at once; a command reads a whole library.
        Assert.All(HostileText.All.Chunk(AtOnce).Select(texts => string.Join(' ', texts)), text => Assert.All(Dear, line => Harmless(line.Replace("CASE", made, StringComparison.Ordinal).Replace("VISIT", visit, StringComparison.Ordinal), text)));
    }

    [Fact]
    public void The_list_of_a_store_with_any_text_in_it()
    {
        using HostileCase hostile = new();
        foreach (string[] texts in HostileText.All.Chunk(AtOnce))
        {
            string store = hostile.Saved(string.Join(' ', texts)).Folder;
            Assert.All(["list --store", "list --json --store", "list --find ok --store"], line => Harmless(_bench.Run([.. line.Split(' '), store]), line));
        }
    }

    [Fact]
    public void Any_name_of_a_file()
    {
        foreach (string text in HostileText.All.Where(text => text.Length is > 0 and < 60 && !text.Contains('/', StringComparison.Ordinal) && !text.Contains('\0', StringComparison.Ordinal)))
        {
            string file = _bench.File("code: [", text + ".yaml");
            Harmless(_bench.Run("check", file), "check");
            Harmless(_bench.Run("draft", file), "draft");
            File.Delete(file);
        }
    }

    [Fact]
    public void Any_text_in_a_case_file()
    {
        foreach (string written in Written())
        {
            string file = _bench.File(PlanBench.Example.Replace("Total knee replacement, cemented", written, StringComparison.Ordinal).Replace("therapist: KL", $"therapist: {written}", StringComparison.Ordinal));
            Assert.All(OnFiles, line => Harmless(_bench.Run([line.Split(' ')[0], file, .. line.Split(' ')[1..]]), line));
        }
    }

    [Fact]
    public void Any_text_in_files_of_visits_sessions_and_a_library()
    {
        _bench.Run("draft", _bench.File(PlanBench.Example), "--save");
        string clinic = _bench.Folder("clinic");
        foreach (string written in Written())
        {
            Harmless(_bench.Run("log", "EXAMPLE-07", "--from", _bench.File($"schema: session-file/1\nsessions: [{{date: 2026-03-07, contractions: 15, note: {written}}}]\n", "session.yaml"), "--json"), "log");
            Harmless(_bench.Run("reassess", "EXAMPLE-07", "--from", _bench.File($"schema: assessment-file/1\ndate: 2026-03-07\nrater: {written}\nreadings: {{flexion_active: 84 deg}}\n", "visit.yaml")), "reassess");
            File.WriteAllText(Path.Combine(clinic, "limits.yaml"), $"schema: limits/1\nlimits:\n  - id: ladder.lag-closed\n    title: {written}\n    value: 6 deg\n    standing: seen\n    source: {written}\n", Encoding.UTF8);
            Harmless(_bench.Run("library", "check", clinic), "library check");
            Harmless(_bench.Run("library", "show", "ladder.lag-closed", "--library", clinic, "--json"), "library show");
        }
    }

    [Fact]
    public void Help_manual_and_completions() =>
        Assert.All(Fixed, line => Harmless(_bench.Run(line.Split(' ')), line));

    // As it is, so that the reader sees the raw bytes, and escaped, so that it is made by the reader.
    private static IEnumerable<string> Written() => HostileText.All.Where(text => text.Length < 1000).Chunk(AtOnce).Select(texts => Quoted(string.Join(' ', texts), escape: true))
        .Concat(HostileText.Some.Select(text => Quoted(text, escape: false)));

    private static string Quoted(string text, bool escape) =>
        $"\"{string.Concat(text.Select(letter => letter is '"' or '\\' ? $"\\{letter}" : escape && letter is < ' ' or > '~' ? $"\\u{(int)letter:X4}" : letter.ToString()))}\"";

    private void Harmless(string line, string text) => Harmless(_bench.Run([.. line.Split(' ').Select(word => word.Replace("#", text, StringComparison.Ordinal))]), line);

    private static void Harmless(CommandRun run, string where)
    {
        Forbidden.NoneInLines(run.Data, where);
        Forbidden.NoneInLines(run.Messages, where);
    }
}
