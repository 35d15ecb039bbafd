using Progression.App.Actions;
using Progression.App.Shell;
using Terminal.Gui.App;
using Terminal.Gui.Drawing;
using Terminal.Gui.Drivers;
using Terminal.Gui.Input;
using Terminal.Gui.Testing;
using Terminal.Gui.Time;

namespace Progression.App.Tests.Shell;

/// <summary>A screen in the real library without a terminal: fixed size, virtual time, keys injected.</summary>
internal sealed class HeadlessScreen<TState> : IDisposable
    where TState : class
{
    private readonly SessionToken? _token;
    private readonly IApplication _application;
    private Frame<TState> _last;

    public HeadlessScreen(ScreenDefinition<TState> screen, TState start, int width = 80, int height = 24, TerminalLook? look = null, IdleWatch? idle = null)
    {
        Environment.SetEnvironmentVariable("DisableRealDriverIO", "1");
        _application = Application.Create(new VirtualTimeProvider());
        _application.Init(DriverRegistry.Names.ANSI);
        _application.Driver!.SetScreenSize(width, height);
        _last = new Frame<TState>(screen, start) { Perform = Perform };
        Screens = new(_last);
        TerminalLook shown = look ?? new(TerminalColours.Sixteen, SevenBitOnly: false);
        View = new(new WorkingScreens(Screens, new WorkWatch(), TimeSpan.FromMinutes(1)), () => shown, idle);
        TerminalSession.Prepare(_application, View);
        _token = _application.Begin(View);
        _application.LayoutAndDraw();
    }

    public ScreenView View { get; }

    public ScreenStack Screens { get; }

    /// <summary>The state now; the last one when the screen is left.</summary>
    public TState State => (_last = Screens.Top as Frame<TState> ?? _last).State;

    public List<ScreenEffect> Performed { get; } = [];

    public string Text => string.Join('\n', _application.Driver!.ToString()!.Split('\n').Select(line => line.TrimEnd()));

    public bool Left => ((IRunnable)View).StopRequested;

    public Cell At(int column, int row) => _application.Driver!.GetOutputBuffer().Contents![row, column];

    public HeadlessScreen<TState> Keys(params Key[] keys)
    {
        foreach (Key key in keys)
        {
            _application.InjectKey(key);
        }
        _application.LayoutAndDraw();
        return this;
    }

    public HeadlessScreen<TState> LookAtTime()
    {
        View.LookAtTime();
        _application.LayoutAndDraw();
        return this;
    }

    public HeadlessScreen<TState> Paste(string text)
    {
        _application.RaisePasteEvent(text);
        _application.LayoutAndDraw();
        return this;
    }

    public HeadlessScreen<TState> Resize(int width, int height)
    {
        _application.Driver!.SetScreenSize(width, height);
        _application.LayoutAndDraw();
        return this;
    }

    public void Dispose()
    {
        if (_token is not null)
        {
            _application.End(_token);
        }
        View.Dispose();
        _application.Dispose();
    }

    private Turn<TState> Perform(TState state, ScreenEffect effect)
    {
        Performed.Add(effect);
        return Turn.Stay(state);
    }
}
