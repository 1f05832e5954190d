// Why: that something is there, is not there, or was not tried is said in other languages with verbs that English has not.
// Spanish, Portuguese, French, German, Polish, Chinese and Indian colourings (common knowledge, no source).

/** What is meant, and the phrases carried over for it. */
export const loanDenials: readonly (readonly [meant: string, phrases: string])[] = [
  // what is there and what is not
  [
    'there is a',
    'exist a, exists a, it exist a, it exists a, there exists a, there exist a, there is existing a, have here a, has here a, it gives here a',
  ],
  ['there is one', 'exists one, exist one, it exists one, it exist one'],
  [
    'there are',
    'it exists, exist some, exists some, it exist some, it exist, there exist, there exists, there have, there has, here have, here has',
  ],
  ['is there', 'is existing, is existent, is present, exists'],
  ['are there', 'are existing, are existent, are present'],
  [
    'is not there',
    "is not existing, not is there, is not existent, not exists, no exists, doesn't exists, doesn't exist, does not exist, not existing, is not having, is not present, isn't present, has not it, no is there",
  ],
  [
    'are not there',
    "are not existing, not are there, don't exist, do not exist, not exist, no exist, no exists, are not present, aren't present",
  ],
  [
    "doesn't have",
    "not has, not have, no has, no have, don't has, doesn't has, is not having, isn't having, has no any, haven't any, hasn't any",
  ],
  [
    'has',
    'is having, it is with, is possessing, possesses, counts with, is counting with, disposes of, disposes over',
  ],
  ['have', 'are having, are possessing, possess, are disposing of'],
  [
    'i did not try',
    "i not tried, i no tried, i not try, i no try, i did not tried, i didn't tried, i haven't try, i not proved, i did not proved, i have not probed, i did not essay, i have it not tried, i have not it tried, i not tested, i no tested, i did not tested, i didn't tested, i am not testing, i did not make the test, i made no test, i did no test",
  ],
  [
    'i could not test',
    "i could not prove the, i couldn't prove the, i can not prove the, i did not prove, i didn't prove, it was not possible to test, was not possible to test, was not possible to try, is not possible to test, not possible to test, impossible to prove",
  ],
  [
    'i did not look',
    "i not looked, i no looked, i did not looked, i didn't looked, i not saw, i did not saw, i didn't saw, i no saw, i have not seen it, i did not watched",
  ],
  [
    'i did not check',
    "i not checked, i no checked, i did not checked, i didn't checked, i not check, i no check, i did not control, i have not controlled, i did not revise, i have not revised, i did not verified, i not verified, i did not checking, i am not checking",
  ],
  [
    'i did not turn it on',
    "i did not switch on, i not turned on, i did not turned on, i didn't turned on, i did not put it on, i have not put it on",
  ],
  [
    "i don't know",
    'i not know, i no know, i am not knowing, i not knowing, i know not, i know nothing, i know nothing about, know nothing, i no have idea, i have not idea, i have no idea, i not sure, i am not informed, i do not knowing, me no know',
  ],
  [
    'i see none',
    'i see nothing, i saw nothing, i see not, i see no one, i see not one, i not see, i no see, i not saw, i am not seeing, i have seen nothing, i have seen none, i could see nothing, i can see nothing, we see nothing, nothing i see, nothing is to see, nothing to see, i see not any, nothing visible, nothing to find, is nothing to see',
  ],
  [
    'i found none',
    "i found nothing, i find nothing, i found not, i not found, i no found, i have found nothing, i have found none, i did not found, i didn't found, i could find nothing, i can find nothing, nothing i found, i do not found, i don't found, i didn't founded, i am not finding, i have not found, i encountered nothing, i noticed nothing, i hear nothing, i heard nothing, i smell nothing, i feel nothing, i felt nothing",
  ],
];
