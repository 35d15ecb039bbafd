using System.Text;
using Progression.App.Commands;
using Progression.App.Tests.Commands.Plans;
using Progression.Core.Documents;

namespace Progression.App.Tests.Commands.Sheets;

/// <summary>Sheet, card and note by their commands, in every format they have.</summary>
public sealed class PaperCommandsTests : IDisposable
{
    private readonly PlanBench _bench = new();

    public void Dispose() => _bench.Dispose();

    [Theory]
    [InlineData("sheet", "Your exercises at home", "What your surgeon told you comes first.")]
    [InlineData("card", "Visit card, EXAMPLE-07", Caution.Text)]
    [InlineData("note", "Progress note and plan of care, EXAMPLE-07", Caution.Text)]
    public void A_paper_comes_as_text_markdown_page_and_pdf_with_mark_and_caution(string command, string title, string caution)
    {
        string file = _bench.File(PlanBench.Example);
        string[] papers = [_bench.Run(command, file).Data, _bench.Run(command, file, "--format", "markdown").Data, _bench.Run(command, file, "--format", "html").Data];

        Assert.All(papers, paper =>
        {
            string line = string.Join(' ', paper.Replace("&#39;", "'", StringComparison.Ordinal).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
            Assert.Contains(title, line, StringComparison.Ordinal);
            Assert.Contains("UNSIGNED DRAFT", line, StringComparison.Ordinal);
            Assert.Contains(caution, line, StringComparison.Ordinal);
        });
        string pdf = Path.Combine(Path.GetDirectoryName(file)!, "paper.pdf");
        Assert.Equal(ExitCode.Good, _bench.Run(command, file, "--out", pdf).Code);
        Assert.StartsWith("%PDF-1.", Encoding.ASCII.GetString(File.ReadAllBytes(pdf)[..8]), StringComparison.Ordinal);
        Assert.Equal(ExitCode.CannotCreate, _bench.Run(command, file, "--out", pdf).Code);
        Assert.Equal(ExitCode.Good, _bench.Run(command, file, "--letter", "--out", pdf, "--force").Code);
        Assert.Equal(ExitCode.Usage, _bench.Run(command, file, "--format", "pdf").Code);
    }

    [Fact]
    public void A_print_whose_letters_would_come_out_wrong_is_refused_and_no_file_is_there()
    {
        string file = _bench.File(PlanBench.Example);
        string pdf = Path.Combine(Path.GetDirectoryName(file)!, "sheet.pdf");
        CommandRun run = _bench.Run("sheet", file, "--clinic", "膝の診療所", "--out", pdf);

        Assert.Equal(ExitCode.BadData, run.Code);
        Assert.Contains("progression sheet: The print's letters lack, or cannot join, what stands in the text: ", run.Messages, StringComparison.Ordinal);
        Assert.False(File.Exists(pdf));
        Assert.Contains("膝の診療所", _bench.Run("sheet", file, "--clinic", "膝の診療所").Data, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("card")]
    [InlineData("note")]
    public void A_week_of_the_card_is_asked_for_and_the_clinics_own_line_stands_on_card_and_note(string command)
    {
        string file = _bench.File(PlanBench.Example);

        Assert.Contains("post-op week 3: 2026-03-16", _bench.Run("card", file, "--week", "3").Data, StringComparison.Ordinal);
        Assert.Contains("Knee clinic, second floor Call ext. 12.", _bench.Run(command, file, "--clinic", "Knee clinic, second floor", "--contact", "ext. 12").Data, StringComparison.Ordinal);
        Assert.Equal(ExitCode.Usage, _bench.Run("card", file, "--week", "99").Code);
    }

    [Fact]
    public void The_words_are_shown_to_start_from_and_a_language_file_is_checked()
    {
        string english = _bench.Run("words", "show").Data;
        string other = english.Replace("language: en", "language: xx", StringComparison.Ordinal).Replace("title: Your exercises at home", "title: Øvelser, ćwiczenia, упражнения", StringComparison.Ordinal);

        CommandRun whole = _bench.Run("words", "check", _bench.File(english, "home-aa.yaml"));
        Assert.Equal(ExitCode.Good, whole.Code);
        Assert.Contains("Nothing is missing and nothing too much.", whole.Data, StringComparison.Ordinal);
        string file = _bench.File(other, "home-xx.yaml");
        CommandRun same = _bench.Run("words", "check", file);
        Assert.Equal(ExitCode.Warning, same.Code);
        Assert.Contains("labels.done: the same as in English.", same.Data, StringComparison.Ordinal);
        Assert.Contains("Reading level: not checked.", same.Data, StringComparison.Ordinal);
        CommandRun wrong = _bench.Run("words", "check", _bench.File(other.Replace("  notes: ", "  note: ", StringComparison.Ordinal), "home-xy.yaml"));
        Assert.Equal(ExitCode.BadData, wrong.Code);
        Assert.Contains("labels.notes", wrong.Messages, StringComparison.Ordinal);
        Assert.Equal(ExitCode.NoInput, _bench.Run("words", "check", "nowhere.yaml").Code);

        string pdf = Path.ChangeExtension(file, ".pdf");
        Assert.Equal(ExitCode.Good, _bench.Run("sheet", _bench.File(PlanBench.Example), "--words", file, "--out", pdf).Code);
    }
}
