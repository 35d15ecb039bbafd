using System.Collections.Immutable;
using Progression.App.Forms;
using Progression.Core.People;

namespace Progression.App.Intake;

/// <summary>The answers of a screening as plain texts: "y" by the item's id, a clearance by the id with ".by", ".on" and ".text", the day by "asked-on".</summary>
internal static class ScreeningTexts
{
    private const string AskedOn = "asked-on";
    private const string NotAsked = "";

    public static FormTexts Of(ScreeningState state)
    {
        ImmutableSortedDictionary<string, ScreeningAnswer> saved = state.Case.Screening.Answers;
        ImmutableSortedDictionary<string, string>.Builder texts = ImmutableSortedDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        foreach (string item in saved.Keys.Except(state.Answers.Keys))
        {
            texts[item] = NotAsked;
        }

        foreach (ScreeningAnswer answer in state.Answers.Values.Where(answer => saved.GetValueOrDefault(answer.Item) != answer))
        {
            texts[answer.Item] = YesNo.Letter(answer.Answer);
            if (answer.Clearance is { } clearance)
            {
                (texts[$"{answer.Item}.by"], texts[$"{answer.Item}.on"], texts[$"{answer.Item}.text"]) = (clearance.By, DayWords.Typed(clearance.On), clearance.Text);
            }
        }

        if (state.AskedOn != (state.Case.Screening.Date ?? state.Today))
        {
            texts[AskedOn] = DayWords.Typed(state.AskedOn);
        }

        return new FormTexts(texts.ToImmutable(), state.Chosen?.Id ?? "");
    }

    public static ScreeningState On(ScreeningState state, FormTexts texts)
    {
        ImmutableSortedDictionary<string, ScreeningAnswer> answers = state.Answers;
        foreach (string item in state.Items.Select(item => item.Id).Where(texts.ById.ContainsKey))
        {
            answers = YesNo.Read("", texts.ById[item]).Value is { } answer ? answers.SetItem(item, new ScreeningAnswer(item, answer.Value, Clearance(item, texts))) : answers.Remove(item);
        }

        int at = state.Items.ToList().FindIndex(item => item.Id == texts.At);
        DateOnly asked = texts.ById.TryGetValue(AskedOn, out string? day) && Day(day) is { } known ? known : state.AskedOn;
        return (state with { AskedOn = asked, Index = at < 0 ? state.Index : at }).With(answers);
    }

    private static Clearance? Clearance(string item, FormTexts texts) =>
        texts.ById.TryGetValue($"{item}.by", out string? by) && texts.ById.TryGetValue($"{item}.text", out string? text) && Day(texts.ById.GetValueOrDefault($"{item}.on")) is { } on
            ? new Clearance(by, on, text)
            : null;

    private static DateOnly? Day(string? text) => DateOnly.TryParseExact(text, "yyyy-MM-dd", out DateOnly day) ? day : null;
}
