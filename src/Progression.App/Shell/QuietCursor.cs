using Terminal.Gui.App;
using Terminal.Gui.Drivers;
using Terminal.Gui.ViewBase;

namespace Progression.App.Shell;

/// <summary>
/// Keeps an idle screen silent: the library never clears its note that the cursor has to be sent, and so sends it with every
/// turn of its loop.
/// </summary>
internal static class QuietCursor
{
    /// <summary>Clears the note whenever the cursor stands where it stood one turn ago.</summary>
    public static void Keep(IApplication application)
    {
        (View? View, Cursor? Cursor) before = default;
        application.Iteration += (_, _) =>
        {
            View? view = application.TopRunnableView?.MostFocused ?? application.TopRunnableView;
            (View?, Cursor?) now = (view, view?.Cursor);
            if (view is not null && now == before)
            {
                application.Driver?.SetCursorNeedsUpdate(false);
            }
            before = now;
        };
    }
}
