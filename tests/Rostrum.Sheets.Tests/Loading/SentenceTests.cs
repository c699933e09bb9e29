namespace Rostrum.Sheets.Tests.Loading;

/// <summary>Hard sentences of rulebooks, each said in a few lines; every sheet is read without a message.</summary>
public sealed class SentenceTests
{
    private const string Game = """
        players: 3
        pieces:
          stone: {attributes: {tint: [red, blue, green]}, each player: 20}
          coin: {count: 60}
        dice: {die: {plural: dice, count: 5, faces: 1 to 6}}
        cards: {card: {attributes: {suit: [clubs, hearts, spades], rank: 1 to 9}, called: (rank) of (suit)}}
        boards: {field: {squares: 6 across 6 up, rows: row, columns: column, spaces: cell}, path: {track: t0 to t30}}
        places:
          deck: {deck of: card}
          discards: {heap of: card, starts: empty}
          hand: {hand of: card, of: each player}
          chosen: {hand of: card, of: each player}
          purse: {heap of: coin, of: each player}
          display: {row of: 4, slots: stall, holds: card and coins}
          cup: {heap of: die}
          bag: {bag of: stone, starts: empty}
        marks:
          bid: {holds: 0 to 99, of: each player, lasts: round}
          highest bidder: {holds: player}
          second bid: {holds: 0 to 99}
          passed: {holds: yes or no, of: each player, lasts: round}
          reshuffled: {holds: 0 to 2}
          trump: {holds: suit}
          step: {holds: 0 to 30, of: each player}
          won: {holds: 0 to 99, of: each player}
          marked: {holds: 0 to 9, of: each cell}
        words:
          touching (cell s, cell t): s is next to t

        """;

    /// <summary>A sentence and how a sheet says it.</summary>
    public static TheoryData<string, string> Sentences => new()
    {
        {
            "If you can capture you must, and go on with the same piece while it can.",
            """
            actions:
              jump: {phrase: jump from (start) to (goal), choose: {start: a cell in field where it shows my stone, goal: a cell in field where it is empty}, do: [move top of start to goal, move all stones from item(1, between(start, goal)) to supply]}
              slide: {phrase: slide (stone) to (goal), choose: {stone: a cell in field where it shows my stone, goal: one of neighbours of stone where it is empty}, do: move top of stone to goal}
            turn:
              - first possible of:
                  - repeat while I can jump from goal of my last jump: jump from goal of my last jump
                  - jump
                  - slide
            laws: {must take: {binds: slide, forbids: I can jump}}
            """
        },
        {
            "You may not undo the move just made.",
            """
            actions:
              shift: {phrase: shift (line), choose: {line: one of rows of field}, do: nothing}
            laws: {no undoing: {binds: shift, forbids: line is line of last shift}}
            """
        },
        {
            "Who has most takes 7.",
            """
            score:
              most: {points: 7 if me is in most(p in players, count(purse of p)) otherwise 0}
            """
        },
        {
            "A row counts only if it is full and no two neighbours in it are alike.",
            """
            score: {rows: {each: r in rows of field where r is full and no(s in r where any(t in neighbours of s where t is in r and tint of top of t is tint of top of s)), points: 1}}
            """
        },
        {
            "When the deck runs out, shuffle the discards once.",
            """
            actions:
              reshuffle:
                do:
                  - if reshuffled is 1: end the game by deck gone
                  - otherwise:
                      - move all cards from discards to deck
                      - shuffle deck
                      - add 1 to reshuffled
            end: {deck gone: {}}
            """
        },
        {
            "Take any number of neighbouring tiles in a straight line, all of one colour.",
            """
            actions:
              pick: {phrase: pick (tiles), choose: {tiles: some cells in field where it is not empty}, do: [for each t in tiles: [move top of t to my supply]]}
            laws:
              one colour: {binds: pick, needs: "different(t in tiles, tint of top of t) is 1"}
              in a line: {binds: pick, needs: any(n in (1 to 6) where any(l in straights(field, n) where all(t in tiles, t is in l) and count(l) is count(tiles)))}
            """
        },
        {
            "Follow suit if you can; the highest trump takes the trick.",
            """
              led suit: suit of the card in chosen of start player
            laws: {follow: {binds: play, needs: led suit is nothing or suit of what is led suit or no(cards in my hand where suit of it is led suit)}}
            actions:
              play: {phrase: play (what), choose: {what: a card in my hand}, do: move what to my chosen}
            turn:
              - each player from start player: play
              - let taker be first of most(p in players, 100 + rank of the card in chosen of p if suit of the card in chosen of p is trump otherwise rank of the card in chosen of p if suit of the card in chosen of p is led suit otherwise 0)
              - each player: move all cards from my chosen to discards
              - set start player to taker
            """
        },
        {
            "Bid higher or pass; the winner pays the second bid.",
            """
            actions:
              bid: {phrase: bid (amount), choose: {amount: a number from 1 to count(my purse)}, do: [set second bid to largest(p in players, bid of p), set my bid to amount, set highest bidder to me]}
              pass: {do: set my passed to yes}
            turn:
              - take turns among players where not my passed until count(p in players where not passed of p) is 1:
                  - one of: [bid, pass]
              - highest bidder does: move second bid coins from my purse to supply
            laws: {higher: {binds: bid, needs: "amount is more than largest(p in players, bid of p)"}}
            """
        },
        {
            "Everyone chooses a card in secret; equal cards cancel.",
            """
            actions:
              choose: {phrase: choose (card), choose: {card: a card in my hand}, do: move card to my chosen}
              compare:
                do:
                  - each player:
                      - if any(p in players where p is not me and rank of the card in chosen of p is rank of the card in my chosen): move all cards from my chosen to discards
            turn: {do: [all at once: [choose], compare]}
            """
        },
        {
            "Roll, keep any dice, roll the rest up to twice more.",
            """
            actions:
              reroll: {phrase: reroll (some), choose: {some: some dice in cup}, do: roll some}
            turn:
              - roll dice
              - may up to 2 times: reroll
            """
        },
        {
            "Once in the game, ignore one law.",
            """
            powers: {lucky: {lifts: any one law, limit: once a game}}
            """
        },
        {
            "The player furthest behind on the track moves next.",
            """
            next to play: first of most((players where step of it is smallest(q in players, step of q)), count(purse of it))
            """
        },
        {
            "A card costs its place in the row; each card left gets a coin.",
            """
            actions:
              buy: {phrase: buy (stall), choose: {stall: a stall in display}, do: [move (order of stall) coins from my purse to supply, move all cards from stall to my hand]}
            closing:
              - for each s in stalls in display where any(cards in s): move a coin from supply to s
            """
        },
        {
            "At the end of a round in which somebody reached 20.",
            """
            end: {twenty: {if: any(p in players where won of p is at least 20), then: finish the round, checked: after each round}}
            ties: [shared]
            """
        },
        {
            "Push a row by one.",
            """
            actions:
              shove: {phrase: shove (line), choose: {line: one of rows of field}, do: push line going east off to my supply}
            """
        },
        {
            "Nobody holds more than seven cards at the end of a turn.",
            """
            actions:
              discard: {phrase: discard (card), choose: {card: a card in my hand}, do: move card to discards}
            after turn:
              - repeat while count(my hand) is more than 7: discard
            """
        },
        {
            "The player to the left chooses one to keep.",
            """
            actions:
              keep: {phrase: keep (which), choose: {which: a stone in bag}, do: move which to my supply}
            turn:
              - deal 3 from deck to discards
              - left of me does: keep
            """
        },
        {
            "All win if every beacon burns; all lose otherwise.",
            """
            end:
              all burn: {if: all(s in field, marked of s is 1), winner: everyone}
              too late: {if: deck is empty, winner: nobody}
            """
        },
        {
            "Landing on an occupied space sends the other piece back.",
            """
            actions:
              land: {phrase: land on (spot), choose: {spot: a space in path}, do: [for each w in stones in spot: [move w to t0], move a stone from my supply to spot]}
            """
        },
        {
            "The same player may not take the same action in two successive rounds.",
            """
            actions:
              a1: {phrase: dig, do: nothing}
              a2: {phrase: plant, do: nothing}
            laws: {not twice: {binds: [a1, a2], forbids: this action was done the round before by me}}
            """
        },
    };

    [Theory]
    [MemberData(nameof(Sentences))]
    public void A_hard_sentence_is_said_without_a_message(string sentence, string said)
    {
        // The deck of one sentence runs short into an action of its own.
        string game = said.Contains("reshuffle:", StringComparison.Ordinal) ? Game.Replace("deck of: card", "deck of: card, when short: reshuffle", StringComparison.Ordinal) : Game;

        Loaded loaded = Loaded.Of($"{game}\n{said}\n");

        Assert.True(loaded.Reading.Problems.IsEmpty, $"{sentence}\n{string.Join('\n', loaded.Told)}");
    }

    [Theory]
    [InlineData("noughts-and-crosses")]
    [InlineData("six-pits")]
    [InlineData("plain-tricks")]
    public void A_whole_game_is_said_without_a_message(string game)
    {
        string sheet = Rostrum.Testing.TestFiles.Read($"tests/Rostrum.Text.Tests/Samples/{game}.yaml").Replace("draw 7", "deal 7", StringComparison.Ordinal);

        Assert.Empty(Loaded.Of(sheet).Told);
    }
}
