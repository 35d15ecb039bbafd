using Progression.App.Shell;

namespace Progression.App.Tests.Shell;

public sealed class PasteWatchTests
{
    [Theory]
    [InlineData("\e[200~text", true)]
    [InlineData("x\e[200~text\e[201~", false)]
    [InlineData("\e[200~a\e[201~\e[200~b", true)]
    [InlineData("\e[20", false)]
    [InlineData("[200~", false)]
    [InlineData("\e[200~\e[20", true)]
    [InlineData("\e\e[200~", true)]
    public void A_paste_is_open_from_its_start_to_its_end_however_it_is_cut(string typed, bool open)
    {
        PasteWatch whole = new(), pieces = new();
        whole.See(typed);
        foreach (char letter in typed)
        {
            pieces.See([letter]);
        }

        Assert.Equal((open, open), (whole.IsOpen, pieces.IsOpen));
        whole.GiveUp();
        Assert.False(whole.IsOpen);
    }
}
