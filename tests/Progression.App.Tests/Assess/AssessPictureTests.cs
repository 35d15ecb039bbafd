using Progression.App.Assess;
using Progression.Core.Library;
using static Progression.App.Tests.Assess.SampleVisits;

namespace Progression.App.Tests.Assess;

public sealed class AssessPictureTests
{
    [Fact]
    public void The_form_looks_like_this()
    {
        AssessState state = Typed(Fill(Fill(Still(), MeasureIds.FlexionActive, "95"), MeasureIds.ExtensionActive, "8 9 10"), "4");
        Snapshot.Match(Text(state), "assess-80x24");
        Snapshot.Match(Text(state, 120, 40), "assess-120x40");
    }

    [Fact]
    public void A_refused_line_looks_like_this() => Snapshot.Match(Text(Fill(Still(), MeasureIds.QuadricepsForce, "60 kg")), "assess-refused-80x24");

    [Fact]
    public void The_question_about_the_sign_looks_like_this() =>
        Snapshot.Match(Text(Fill(Open(Knee with { DeficitWritten = null }), MeasureIds.ExtensionActive, "8")), "assess-sign-80x24");

    [Fact]
    public void A_correction_and_its_reason_look_like_this() =>
        Snapshot.Match(Text(Press(Fill(Open(visit: Second), MeasureIds.FlexionActive, "87"), "Ctrl+S")), "assess-reason-80x24");

    [Fact]
    public void The_help_looks_like_this() => Snapshot.Match(Text(Press(Still(), "F1"), 80, 45), "assess-help-80x45");

    [Fact]
    public void Hostile_text_stays_harmless()
    {
        AssessState state = Open(Knee with { Therapist = "x\u001b[2J", Assessments = [Knee.Assessments[0] with { Rater = "\u202Eevil\u001b]0;" }] });
        string text = Text(Typed(state, "9\u001b[31m5\n7"));
        Assert.DoesNotContain('\u001b', text);
        Assert.DoesNotContain('\u202E', text);
    }

    [Fact]
    public void Every_line_comes_into_sight_with_its_caret()
    {
        AssessState state = Open();
        foreach (string id in state.Form.Lines.Where(line => !line.IsShownOnly).Select(line => line.Id))
        {
            AssessState at = state with { Form = state.Form.To(id) };
            int row = AssessPicture.Draw(at, new(80, 24)).Caret!.Row;
            Assert.StartsWith("> " + at.Form.Current.Title, Text(at).Split('\n')[row], StringComparison.Ordinal);
        }
    }
}
