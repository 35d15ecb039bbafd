using System.Diagnostics;
using System.Text.RegularExpressions;

namespace Progression.EndToEnd.Tests;

/// <summary>The pages of sheet and note in a real browser: Debian's chromium without a window, once as printed and once at 200 % zoom.</summary>
public sealed partial class PapersInABrowserTests : IDisposable
{
    // A window of 1280 points at 200 % zoom shows 640 points of a page (WCAG 2.1, 1.4.4 and 1.4.10).
    private const string Zoomed = "--window-size=640,900 --force-device-scale-factor=2";
    private const string Look = """
        <script>const root = document.documentElement, body = getComputedStyle(document.body);
        root.dataset.seen = [root.scrollWidth - root.clientWidth, body.fontSize, body.textAlign, document.querySelectorAll('.tick').length, document.querySelectorAll('svg').length].join(' ');</script>
        """;

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("browser-");

    public void Dispose() => _folder.Delete(recursive: true);

    [Theory]
    [InlineData("sheet", "A4", "59[45]", "84[12]", 10)]
    [InlineData("sheet", "letter", "612", "792", 10)]
    [InlineData("note", "A4", "59[45]", "84[12]", 8)]
    [InlineData("note", "letter", "612", "792", 8)]
    public void A_page_prints_whole_on_a4_and_letter_with_its_mark_on_every_sheet(string command, string paper, string width, string height, int most)
    {
        string page = Page(command);
        string print = Path.Combine(_folder.FullName, "print.pdf");
        Browse($"--no-pdf-header-footer --print-to-pdf={print}", page.Replace("</head>", $"<style>@page{{size:{paper}}}</style></head>", StringComparison.Ordinal));

        Assert.Matches($@"Page size: +{width}[.\d]* x {height}", Run("pdfinfo", print));
        string[] sheets = Run("pdftotext", $"-layout {print} -").Split('\f', StringSplitOptions.RemoveEmptyEntries);
        Assert.InRange(sheets.Length, 3, most);
        Assert.All(sheets, sheet => Assert.Contains("UNSIGNED DRAFT. ", Spaced(sheet), StringComparison.Ordinal));
        Assert.All(sheets.Select((sheet, index) => (sheet, index)), one => Assert.Matches($"{one.index + 1} ?/ ?{sheets.Length}", one.sheet));
        // Whatever stands in the page stands on the paper, and nothing is cut off at its edge.
        string[] there = Spaced(string.Concat(sheets)).Split(' ');
        string[] words = Spaced(System.Net.WebUtility.HtmlDecode(Markup().Replace(page[page.IndexOf("<body>", StringComparison.Ordinal)..], " "))).Split(' ', StringSplitOptions.RemoveEmptyEntries);
        string[] lost = [.. words.Except(there)];
        Assert.Equal([], lost);
    }

    [Theory]
    [InlineData("sheet", "21.3333px")]
    [InlineData("note", "14.6667px")]
    public void At_200_percent_nothing_is_wider_than_the_window_and_letters_keep_their_size(string command, string size)
    {
        string page = Page(command);
        string seen = Seen().Match(Browse($"{Zoomed} --dump-dom", Policy().Replace(page, "").Replace("</body>", Look + "</body>", StringComparison.Ordinal))).Groups[1].Value;
        string[] figures = seen.Split(' ');

        Assert.Equal(["0", size, "start"], figures[..3]);
        Assert.Equal(command == "sheet", int.Parse(figures[3], null) > 20);
        Assert.Equal(command == "sheet" ? "1" : "0", figures[4]);
    }

    [Fact]
    public void What_stands_in_a_text_is_not_run()
    {
        string page = Page("sheet", "--clinic", "<script>document.title='run'</script><img src=x onerror=\"document.title='run'\">");

        Assert.DoesNotContain("<title>run</title>", Browse("--dump-dom", page), StringComparison.Ordinal);
        // The page's own policy holds even where a script had come in.
        Assert.Contains("<title>Your exercises at home</title>", Browse("--dump-dom", page.Replace("</body>", "<script>document.title='run'</script></body>", StringComparison.Ordinal)), StringComparison.Ordinal);
    }

    private string Page(string command, params string[] more)
    {
        string file = Path.Combine(_folder.FullName, "case.yaml");
        string[] program = TerminalWindow.Program.Split(' ');
        File.WriteAllText(file, Run(program[0], [.. program[1..], "example"]));
        return Run(program[0], [.. program[1..], command, file, "--format", "html", .. more]);
    }

    private string Browse(string options, string page)
    {
        string file = Path.Combine(_folder.FullName, "page.html");
        File.WriteAllText(file, page);
        return Run("chromium", $"--headless --no-sandbox --disable-gpu --disable-dev-shm-usage --user-data-dir={_folder.FullName}/profile {options} file://{file}");
    }

    private static string Run(string tool, string words) => Run(tool, words.Split(' '));

    private static string Run(string tool, string[] words)
    {
        ProcessStartInfo start = new(tool, words) { RedirectStandardOutput = true, RedirectStandardError = true };
        using Process process = Process.Start(start)!;
        Task<string> errors = process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        string answer = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        Assert.True(process.ExitCode == 0, $"{tool} ended with {process.ExitCode}: {errors.Result}");
        return answer;
    }

    private static string Spaced(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    [GeneratedRegex("<svg.*?</svg>|<[^>]*>", RegexOptions.Singleline)]
    private static partial Regex Markup();

    [GeneratedRegex("<meta http-equiv=[^>]*>")]
    private static partial Regex Policy();

    [GeneratedRegex("data-seen=\"([^\"]*)\"")]
    private static partial Regex Seen();
}
