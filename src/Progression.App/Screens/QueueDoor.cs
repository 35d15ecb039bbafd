using System.Collections.Immutable;
using Progression.App.Actions;
using Progression.App.Reviews;
using Progression.App.Stores;
using Progression.Core.People;
using Progression.Records.Caseload;
using Progression.Records.Storage;

namespace Progression.App.Screens;

/// <summary>The queue of reviews in the stack of screens.</summary>
/// <param name="store">The store.</param>
/// <param name="plan">Opens a plan to be reviewed; null with a sentence that says why there is none.</param>
internal sealed class QueueDoor(OpenStore store, Func<CaseCode, (Frame? Frame, string? Why)> plan)
{
    private ImmutableArray<WaitingReview> _read = [];
    private long _looked = -1;

    /// <summary>The queue as it is now.</summary>
    public Frame Open(string told = "") => new Frame<QueueState>(QueueScreen.Definition, Read(new QueueState { Account = store.Book.By.UserId, Now = store.Clock.GetUtcNow() }) with { Status = told })
    {
        Perform = Perform,
        Others = _ => Look(),
    };

    private Turn<QueueState> Perform(QueueState state, ScreenEffect effect)
    {
        try
        {
            return effect switch
            {
                OpenReview open => plan(open.Code) is { Frame: { } frame } ? Turn.Open(state, frame) : Turn.Stay(state with { Status = $"The plan of {open.Code} cannot be opened." }),
                PlanLeft left => Turn.Stay(Read(state) with { Status = left.Told ?? "" }),
                ReadQueue => Turn.Stay(Read(state) with { Status = "The queue is as it is now." }),
                QueueRead read => Turn.Stay(state.With(_read = read.Waiting, store.Clock.GetUtcNow())),
                _ => Turn.Stay(state),
            };
        }
        catch (Exception fault) when (fault is StoreException or FormatException or IOException or UnauthorizedAccessException)
        {
            return Turn.Stay(state with { Status = fault.Message });
        }
    }

    private QueueState Read(QueueState state) => state.With(_read = Waiting(), store.Clock.GetUtcNow());

    private ImmutableArray<WaitingReview> Waiting() => Directory.Exists(store.Folder) ? store.Book.Reviews.Waiting() : [];

    private QueueRead? Look()
    {
        try
        {
            if (!Directory.Exists(store.Folder) || !store.Book.HasChangedSince(Volatile.Read(ref _looked)))
            {
                return null;
            }

            long now = store.Book.Generation();
            ImmutableArray<WaitingReview> waiting = Waiting();
            if (!waiting.ToHashSet().SetEquals(_read))
            {
                return new QueueRead(waiting);
            }

            Volatile.Write(ref _looked, now);
            return null;
        }
        catch (Exception fault) when (fault is StoreException or IOException or UnauthorizedAccessException)
        {
            return null; // Looked again in a second; reading it by hand says what is wrong.
        }
    }
}
