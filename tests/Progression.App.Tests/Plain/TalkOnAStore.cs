using Progression.App.Actions;
using Progression.App.Plain;
using Progression.App.Screens;
using Progression.App.Stores;
using Progression.App.Tests.Stores;
using Progression.Core.People;
using Progression.Records.Caseload;

namespace Progression.App.Tests.Plain;

/// <summary>A conversation in line mode over a real store on disk.</summary>
internal sealed class TalkOnAStore : IDisposable
{
    private readonly TempStore _temp = new();
    private readonly PlainTalk _talk;
    private readonly List<string> _heard = [];

    private TalkOnAStore(bool demo)
    {
        Store = _temp.Open(demo ? _temp.Demo : _temp.Own);
        if (demo)
        {
            Assert.True(DemoStore.Prepare(Store, fresh: false).Ready);
        }

        ListFrame list = new(new WorkbookOrder(Store, () => Store), new Farewells());
        Screens = demo ? new(list.Plan(DemoStore.Showcase).Frame!) : new(list.Open());
        _talk = new(Screens);
        _heard.AddRange(_talk.Begin());
    }

    public OpenStore Store { get; }

    public ScreenStack Screens { get; }

    public bool IsOver => _talk.IsOver;

    public static TalkOnAStore Demo() => new(demo: true);

    public static TalkOnAStore Empty() => new(demo: false);

    public OpenedCase Saved(CaseCode? code = null) => Store.Book.Open(code ?? DemoStore.Showcase)!;

    /// <summary>Says lines one after the other and gives what was heard after the last.</summary>
    public IReadOnlyList<string> Say(params string[] lines)
    {
        IReadOnlyList<string> last = [];
        foreach (string line in lines)
        {
            last = _talk.Hear(line);
            _heard.AddRange(last);
        }

        return last;
    }

    public bool End() => _talk.End();

    public void Dispose()
    {
        // Whatever was heard was fit for a voice.
        Assert.All(_heard, line => Assert.DoesNotMatch(@"[^\x20-\x7E]", PlainLetters.Line(line, sevenBit: true)));
        _temp.Dispose();
    }
}
